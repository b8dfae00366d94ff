package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.AnchorUse;
import mullwright.model.Grid;
import mullwright.model.Part;

/**
 * The weight of each length of vertical with what hangs on it: itself, half of each horizontal that
 * ends on it, half of what stands on those horizontals, its reinforcement, and what brackets bring.
 *
 * <p>Weight goes to the length that holds the horizontal a lite stands on, whatever length stands
 * beside the lite higher up. Plates, caps and gaskets are not in it.
 */
final class DeadWeight {
  /** A horizontal this near to an end of a length [m] still hangs on it. */
  private static final double AT_THE_END = 0.02;

  private final WallLayout layout;
  private final LineCentres centres;
  private final List<List<VerticalPiece>> piecesOfLine = new ArrayList<>();
  private final double[] newtons;
  private final double[] bottoms;
  private final double[] tops;

  DeadWeight(
      WallLayout layout, CellWeight weights, List<VerticalRun> runs, List<HorizontalSpan> spans) {
    this.layout = layout;
    this.centres = new LineCentres(layout);
    this.newtons = new double[layout.verticals().size()];
    this.bottoms = new double[newtons.length];
    this.tops = new double[newtons.length];
    layout.wall().grid().lines().forEach(line -> piecesOfLine.add(new ArrayList<>()));
    for (VerticalPiece piece : layout.verticals()) {
      piecesOfLine.get(piece.line()).add(piece);
      bottoms[piece.index()] = piece.bottom().toMetres();
      tops[piece.index()] = piece.top().toMetres();
      newtons[piece.index()] = perLength(piece.profile()) * piece.length().toMetres();
    }
    Set<Integer> resting = new HashSet<>();
    for (HorizontalSpan span : spans) {
      if (span.rests().size() > 2 && span.weight().isPresent()) {
        rest(span);
        for (int cell : span.above()) {
          resting.add(cell);
        }
        continue;
      }
      HorizontalPiece horizontal = span.piece();
      double half = perLength(horizontal.profile()) * horizontal.length().toMetres() / 2;
      hang(horizontal.leftLine(), horizontal.yLeft().toMetres(), half);
      hang(horizontal.rightLine(), horizontal.yRight().toMetres(), half);
    }
    Grid grid = layout.wall().grid();
    for (Cell cell : layout.cells()) {
      if (resting.contains(cell.index())) {
        continue;
      }
      double half = weights.of(cell.index()) / 2;
      double sill = cell.bottom().toMetres();
      hang(grid.bays().get(cell.firstBay()).left(), sill, half);
      hang(grid.bays().get(cell.lastBay()).right(), sill, half);
    }
    for (VerticalRun run : runs) {
      run.points().forEach(p -> newtons[run.pieceAt(p.at()).index()] += p.down());
      for (RunBar bar : run.bars()) {
        double along = bar.part().massPerLength().map(m -> m.value().toSi()).orElse(0.0);
        for (VerticalPiece piece : run.pieces()) {
          double from = Math.max(bar.from(), piece.bottom().toMetres());
          double to = Math.min(bar.to(), piece.top().toMetres());
          newtons[piece.index()] += along * CellWeight.G * Math.max(0, to - from);
        }
      }
    }
  }

  /** Weight of a profile on its length [N/m]; 0 where its catalog states no mass. */
  static double perLength(Part.Profile profile) {
    return profile.massPerLength().map(m -> m.value().toSi() * CellWeight.G).orElse(0.0);
  }

  // a vertical that stands under a horizontal takes its share of it
  private void rest(HorizontalSpan span) {
    double left = centres.of(span.piece().leftLine());
    double y = span.piece().yLeft().toMetres();
    // one that stands under it ends at its lower edge
    double near = span.piece().profile().face().value().toMetres() / 2 + AT_THE_END;
    for (int line = span.piece().leftLine(); line <= span.piece().rightLine(); line++) {
      double at = centres.of(line) - left;
      if (at >= 0 && at <= span.length()) {
        hang(line, y, near, span.weight().get().reactions(at).greatest().value());
      }
    }
  }

  private void hang(int line, double y, double force) {
    hang(line, y, AT_THE_END, force);
  }

  private void hang(int line, double y, double near, double force) {
    List<VerticalPiece> pieces = piecesOfLine.get(line);
    for (int i = pieces.size() - 1; i >= 0; i--) {
      int at = pieces.get(i).index();
      if (bottoms[at] - near <= y && y <= tops[at] + near) {
        newtons[at] += force;
        return;
      }
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
