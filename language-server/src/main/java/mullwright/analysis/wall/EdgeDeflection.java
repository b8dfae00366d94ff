package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import mullwright.layout.Cell;

/**
 * The deflection of the edge of a lite along a member, off the line between the edge's two ends.
 *
 * @param cell index of the lite in the layout; of several along one edge, the first
 * @param from where the edge begins on the member [m]; {@code to} where it ends
 * @param sag the largest deflection of all cases
 */
public record EdgeDeflection(int cell, double from, double to, SolvedBeam.Peak sag) {

  /** The edges of the lites on either side of a run that stands, from below, none twice. */
  public static List<EdgeDeflection> along(WallAnalysis analysis, VerticalRun run) {
    List<EdgeDeflection> found = new ArrayList<>();
    if (run.standing().isEmpty()) {
      return found;
    }
    SolvedBeam beam = run.standing().get();
    double start = beam.responses().get(0).beam().start();
    double end = beam.responses().get(0).beam().end();
    List<Side> sides = new ArrayList<>(run.tributaries().size());
    for (Tributary tributary : run.tributaries()) {
      Cell cell = analysis.layout().cells().get(tributary.cell());
      if (cell.opening().isEmpty()) {
        sides.add(new Side(cell, bottom(cell)));
      }
    }
    sides.sort(new Upward());
    double before = Double.NaN;
    double last = Double.NaN;
    for (Side side : sides) {
      double from = Math.max(start, side.bottom());
      double to = Math.min(end, top(side.cell()));
      // lites left and right that begin and end alike have one edge
      if (from < to && (side.bottom() != before || to != last)) {
        found.add(new EdgeDeflection(side.cell().index(), from, to, beam.sag(from, to)));
        last = to;
      } else if (side.bottom() != before) {
        last = Double.NaN;
      }
      before = side.bottom();
    }
    return found;
  }

  /** The side of a lite, from its lower end on [m]. */
  private record Side(Cell cell, double bottom) {}

  /** From below. A class, since what is made at run time would cost every start. */
  private static final class Upward implements Comparator<Side> {
    @Override
    public int compare(Side one, Side other) {
      return Double.compare(one.bottom(), other.bottom());
    }
  }

  /** The edges of the lites over and under a horizontal that do not run along all of it. */
  public static List<EdgeDeflection> along(WallAnalysis analysis, HorizontalSpan span) {
    List<EdgeDeflection> found = new ArrayList<>();
    if (span.wind().isEmpty() || span.oneLiteASide()) {
      return found;
    }
    int[] cells = Arrays.copyOf(span.below(), span.below().length + span.above().length);
    System.arraycopy(span.above(), 0, cells, span.below().length, span.above().length);
    double left = span.piece().left().toMetres();
    for (int index : cells) {
      Cell cell = analysis.layout().cells().get(index);
      double from = cell.left().minus(cell.biteLeft()).toMetres() - left;
      double to = cell.right().plus(cell.biteRight()).toMetres() - left;
      from = Math.max(0, from);
      to = Math.min(span.length(), to);
      if (cell.opening().isEmpty() && from < to) {
        found.add(new EdgeDeflection(index, from, to, span.wind().get().sag(from, to)));
      }
    }
    return found;
  }

  private static double bottom(Cell cell) {
    return cell.bottom().minus(cell.biteBottom()).toMetres();
  }

  private static double top(Cell cell) {
    return cell.top().plus(cell.biteTop()).toMetres();
  }

  /** Length of the edge [m]. */
  public double length() {
    return to - from;
  }
}
