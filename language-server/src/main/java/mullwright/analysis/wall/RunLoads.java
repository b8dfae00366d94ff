package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.beam.BeamLoad;
import mullwright.analysis.beam.HingedBeam;
import mullwright.analysis.beam.LoadCase;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.RowPieces;
import mullwright.layout.SpliceJoint;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;
import mullwright.model.Members;
import mullwright.quantity.Length;

/**
 * The loads on each run of vertical.
 *
 * <p>Each cell beside the line brings half its width times the pressure the vertical takes from it
 * ({@link MemberWind}), uniform from the row under it to the row over it, and at the ends of the
 * run on to the outer edge of the frame (common practice). A void brings nothing.
 *
 * <p>Cases: {@code wind in} and {@code wind out}, if wind is given; with brackets on the run, both
 * again with the brackets' forces, and the brackets alone. A bracket's weight turns the vertical by
 * weight × arm; what it pushes sideways along the wall is not in these beams.
 */
final class RunLoads {
  private final WallLayout layout;
  private final WindOnWall wind;
  private final LineCentres centres;
  private final List<List<Cell>> cellsOfLine;
  private final double widestHalfFace;

  private final RowPieces rows;

  /**
   * Where a row passes a line.
   *
   * @param y height of its centre [m]
   * @param slack how far below or above that the frame may end there if nothing is beyond the row
   *     [m]
   */
  private record Pass(double y, double slack) {}

  RunLoads(WallLayout layout, WindOnWall wind, LineCentres centres, RowPieces rows) {
    this.layout = layout;
    this.wind = wind;
    this.centres = centres;
    this.rows = rows;
    Grid grid = layout.wall().grid();
    this.cellsOfLine = Lists.of(grid.lines().size());
    for (Cell cell : layout.cells()) {
      cellsOfLine.get(grid.bays().get(cell.firstBay()).left()).add(cell);
      cellsOfLine.get(grid.bays().get(cell.lastBay()).right()).add(cell);
    }
    double widest = 0;
    for (HorizontalPiece horizontal : layout.horizontals()) {
      widest = Math.max(widest, horizontal.profile().face().value().toMetres() / 2);
    }
    this.widestHalfFace = widest;
  }

  /** What the cells beside a run bring, by height. */
  List<Tributary> tributaries(List<VerticalPiece> pieces, List<RunSupport> supports) {
    double bottom = pieces.get(0).bottom().toMetres();
    double top = pieces.get(pieces.size() - 1).top().toMetres();
    List<Tributary> found = new ArrayList<>();
    for (Cell cell : cellsOfLine.get(pieces.get(0).line())) {
      boolean open = cell.opening().filter(o -> o.kind() == Grid.OpeningKind.VOID).isPresent();
      Pass below = pass(cell, cell.below(), pieces.get(0), cell.bottom());
      Pass above = pass(cell, cell.above(), pieces.get(0), cell.top());
      double from = Math.max(bottom, below.y());
      double to = Math.min(top, above.y());
      if (!open && from < to) {
        from = from - bottom <= below.slack() ? bottom : from;
        to = top - to <= above.slack() ? top : to;
        found.add(
            new Tributary(
                cell.index(), from, to, centres.width(cell) / 2, MemberWind.ofLite(wind, cell)));
      }
    }
    found.sort(RunLoads::fromBelow);
    return wind.fromSite() ? SpanWind.of(found, supports, bottom, top) : found;
  }

  private static int fromBelow(Tributary one, Tributary other) {
    int order = Double.compare(one.from(), other.from());
    return order == 0 ? Integer.compare(one.cell(), other.cell()) : order;
  }

  // where the row under or over a cell passes the line; the daylight edge where no horizontal is
  private Pass pass(Cell cell, int row, VerticalPiece vertical, Length daylightEdge) {
    double slack = widestHalfFace + RunSupport.SAME_HEIGHT;
    List<Grid.Bay> bays = layout.wall().grid().bays();
    int bay =
        bays.get(cell.firstBay()).left() == vertical.line() ? cell.firstBay() : cell.lastBay();
    Optional<HorizontalPiece> bounds = row < 0 ? Optional.empty() : rows.in(row, bay);
    if (bounds.isEmpty()) {
      return new Pass(bare(row, daylightEdge).toMetres(), slack);
    }
    HorizontalPiece piece = bounds.get();
    double y = piece.yLeft().toMetres();
    double rise = piece.yRight().toMetres() - y;
    if (rise == 0) {
      return new Pass(y, slack);
    }
    double left = piece.left().toMetres();
    double slope = rise / (piece.right().toMetres() - left);
    double half = vertical.profile().face().value().toMetres() / 2;
    // half a face measured straight up, and what the row rises over half the vertical's face
    return new Pass(
        y + slope * (vertical.x().toMetres() - left),
        slack * Math.hypot(1, slope) + Math.abs(slope) * half);
  }

  // a row nobody made a horizontal of
  private Length bare(int row, Length daylightEdge) {
    List<Grid.Row> given = layout.wall().grid().rows();
    return row < 0 || row >= given.size() || given.get(row).slopes()
        ? daylightEdge
        : given.get(row).left().elevation();
  }

  /** What the brackets on a run bring, from below. */
  List<RunPoint> brackets(List<VerticalPiece> pieces, List<SpliceJoint> splices) {
    double bottom = pieces.get(0).bottom().toMetres();
    double top = pieces.get(pieces.size() - 1).top().toMetres();
    String line = layout.wall().grid().lines().get(pieces.get(0).line()).name();
    List<RunPoint> found = new ArrayList<>();
    for (Members.Bracket bracket : layout.wall().members().brackets()) {
      double y = bracket.at().elevation().toMetres();
      if (bracket.line() == pieces.get(0).line() && bottom <= y && y <= top) {
        found.add(point(bracket, clearOfJoints(y, splices), "bracket of vertical " + line));
      }
    }
    return found;
  }

  // what is fixed at a joint sits on the length over it
  private static double clearOfJoints(double y, List<SpliceJoint> splices) {
    for (SpliceJoint splice : splices) {
      if (Math.abs(splice.y().toMetres() - y) <= HingedBeam.COINCIDENT) {
        return splice.y().toMetres() + 2 * HingedBeam.COINCIDENT;
      }
    }
    return y;
  }

  private static RunPoint point(Members.Bracket bracket, double y, String name) {
    double in = 0;
    double down = 0;
    double couple = 0;
    for (Members.Load load : bracket.loads()) {
      double force = load.force().value().toSi();
      double arm = load.arm().map(given -> given.value().toMetres()).orElse(0.0);
      switch (load.direction()) {
        case "in" -> in += force;
        case "out" -> in -= force;
        case "down" -> {
          down += force;
          // a weight out from the wall turns the upper side outward
          couple -= force * arm;
        }
        case "up" -> {
          down -= force;
          couple += force * arm;
        }
        default -> {
          // left and right bend the vertical in the plane of the wall, which no beam here does
        }
      }
    }
    return RunPoint.ofBracket(y, in, couple, down, name);
  }

  /** The load cases of a run from {@code start} to {@code end} [m]; none if nothing loads it. */
  List<LoadCase> cases(
      List<Tributary> tributaries, List<RunPoint> points, double start, double end) {
    List<BeamLoad> in = new ArrayList<>();
    List<BeamLoad> out = new ArrayList<>();
    for (Tributary tributary : tributaries) {
      double from = Math.max(start, tributary.from());
      double to = Math.min(end, tributary.to());
      if (from < to) {
        in.add(BeamLoad.Distributed.uniform(from, to, tributary.in()));
        out.add(BeamLoad.Distributed.uniform(from, to, -tributary.out()));
      }
    }
    List<BeamLoad> brackets = new ArrayList<>();
    for (RunPoint point : points) {
      if (point.in() != 0 || point.out() != 0) {
        in.add(new BeamLoad.PointForce(point.at(), point.in()));
        out.add(new BeamLoad.PointForce(point.at(), point.out()));
      }
      if (point.bracket() != 0) {
        brackets.add(new BeamLoad.PointForce(point.at(), point.bracket()));
      }
      if (point.couple() != 0) {
        brackets.add(new BeamLoad.Couple(point.at(), point.couple()));
      }
    }
    List<LoadCase> cases = new ArrayList<>();
    if (wind.given() && !in.isEmpty()) {
      cases.add(new LoadCase("wind in", in));
      cases.add(new LoadCase("wind out", out));
      if (!brackets.isEmpty()) {
        cases.add(new LoadCase("wind in and brackets", both(in, brackets)));
        cases.add(new LoadCase("wind out and brackets", both(out, brackets)));
      }
    }
    if (!brackets.isEmpty()) {
      cases.add(new LoadCase("brackets", brackets));
    }
    return cases;
  }

  private static List<BeamLoad> both(List<BeamLoad> wind, List<BeamLoad> brackets) {
    List<BeamLoad> both = new ArrayList<>(wind);
    both.addAll(brackets);
    return both;
  }
}
