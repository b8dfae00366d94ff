package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.AnchorUse;
import mullwright.model.Grid;
import mullwright.model.Part;
import mullwright.quantity.Kind;
import mullwright.quantity.Quantity;

/**
 * The weight of each length of vertical with what hangs on it: itself, half of each horizontal that
 * ends on it, and half of what stands on those horizontals.
 *
 * <p>Weight goes to the length that holds the horizontal a lite stands on, whatever length stands
 * beside the lite higher up. Plates, caps, gaskets and reinforcement are not in it.
 */
final class DeadWeight {
  /** Standard acceleration of free fall [m/s²], exact by definition. */
  private static final double G = 9.80665;

  /** A horizontal this near to an end of a length [m] still hangs on it. */
  private static final double AT_THE_END = 0.02;

  /** Soda-lime glass [kg/m³] (EN 572-1, from memory). */
  private static final double GLASS = 2500;

  private final WallLayout layout;
  private final List<List<VerticalPiece>> piecesOfLine = new ArrayList<>();
  private final double[] newtons;
  private final double[] bottoms;
  private final double[] tops;

  DeadWeight(WallLayout layout) {
    this.layout = layout;
    this.newtons = new double[layout.verticals().size()];
    this.bottoms = new double[newtons.length];
    this.tops = new double[newtons.length];
    layout.wall().grid().lines().forEach(line -> piecesOfLine.add(new ArrayList<>()));
    for (VerticalPiece piece : layout.verticals()) {
      piecesOfLine.get(piece.line()).add(piece);
      bottoms[piece.index()] = piece.bottom().toMetres() - AT_THE_END;
      tops[piece.index()] = piece.top().toMetres() + AT_THE_END;
      newtons[piece.index()] = perLength(piece.profile()) * piece.length().toMetres();
    }
    for (HorizontalPiece horizontal : layout.horizontals()) {
      double half = perLength(horizontal.profile()) * horizontal.length().toMetres() / 2;
      hang(horizontal.leftLine(), horizontal.yLeft().toMetres(), half);
      hang(horizontal.rightLine(), horizontal.yRight().toMetres(), half);
    }
    Grid grid = layout.wall().grid();
    for (Cell cell : layout.cells()) {
      double half = weight(cell) / 2;
      double sill = cell.bottom().toMetres();
      hang(grid.bays().get(cell.firstBay()).left(), sill, half);
      hang(grid.bays().get(cell.lastBay()).right(), sill, half);
    }
  }

  private static double perLength(Part.Profile profile) {
    return profile.massPerLength().map(mass -> mass.value().toSi() * G).orElse(0.0);
  }

  private static double weight(Cell cell) {
    double area = cell.glassWidth().toMetres() * cell.glassHeight().toMetres();
    Optional<Grid.Opening> opening = cell.opening();
    if (opening.isPresent()) {
      return opening.get().mass().map(mass -> massPerArea(mass.value()) * area * G).orElse(0.0);
    }
    return cell.glass()
        .map(
            glass ->
                glass.layers().stream()
                        .filter(layer -> layer.what().equals("ply"))
                        .mapToDouble(layer -> layer.thickness().toMetres())
                        .sum()
                    * GLASS
                    * area
                    * G)
        .orElse(0.0);
  }

  // psf is read as a mass per area where one is asked for; a pressure is brought back by g
  private static double massPerArea(Quantity mass) {
    return mass.is(Kind.PRESSURE) ? mass.toSi() / G : mass.toSi();
  }

  private void hang(int line, double y, double force) {
    int best = -1;
    for (VerticalPiece piece : piecesOfLine.get(line)) {
      if (bottoms[piece.index()] <= y && y <= tops[piece.index()]) {
        best = piece.index();
      }
    }
    if (best >= 0) {
      newtons[best] += force;
    }
  }

  /** Weight of a length with what hangs on it [N]. */
  double of(VerticalPiece piece) {
    return newtons[piece.index()];
  }

  /** Weight on an anchor [N]: the dead-load anchors of a length share it. */
  double on(PlacedAnchor anchor, VerticalRun run) {
    if (anchor.use().kind() != AnchorUse.Kind.DEAD_LOAD) {
      return 0;
    }
    VerticalPiece piece = layout.verticals().get(anchor.vertical());
    long sharing = run.supportsOf(piece).stream().filter(RunSupport::deadLoad).count();
    return of(piece) / Math.max(1, sharing);
  }
}
