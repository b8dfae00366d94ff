package mullwright.check;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import mullwright.model.Grid;
import mullwright.model.Installation;
import mullwright.model.Members;
import mullwright.model.Wall;
import mullwright.model.WallDifference;
import mullwright.quantity.Length;

/**
 * The portions of a wall in which rules may answer otherwise than before.
 *
 * <p>A line is clean if one vertical stands on it from bottom to top and no opening spans it: then
 * no horizontal, lite or opening reaches past it, and what stands on one side bears on the other
 * only through that vertical. Inside a ladder of unlike lines none is. Between two clean lines lies
 * a panel. What changes in a panel bears on that panel and on the verticals at its two ends; for
 * those to be judged right the panels beside it must be there too.
 */
public final class Portions {
  /** No rule looks farther past a panel than this: glass beside a door is told within 24 in. */
  private static final Length SIGHT = Length.ofInches(48);

  private final Wall wall;
  private final BitSet clean = new BitSet();

  /**
   * One of them.
   *
   * @param told the lines whose pieces are to be judged
   * @param laidOut these and what stands beside them
   */
  public record Portion(LineRange told, LineRange laidOut) {}

  private Portions(Wall wall) {
    this.wall = wall;
    findClean();
    joinLadders();
  }

  /**
   * The portions, from the left, none if nothing has changed; empty if the whole wall is as quickly
   * judged, or has to be.
   *
   * @param difference what has changed since
   * @param lines where something was found before, and is to be told again
   */
  public static Optional<List<Portion>> of(Wall wall, WallDifference difference, BitSet lines) {
    Portions portions = new Portions(wall);
    List<Portion> found = new ArrayList<>();
    int bays = 0;
    for (LineRange told : portions.touched(difference, lines)) {
      LineRange laidOut = portions.around(told);
      bays += laidOut.bays();
      found.add(new Portion(told, laidOut));
    }
    return 2 * bays > wall.grid().bays().size() ? Optional.empty() : Optional.of(found);
  }

  private int lines() {
    return wall.grid().lines().size();
  }

  private void findClean() {
    BitSet several = new BitSet();
    for (Members.Vertical vertical : wall.members().verticals()) {
      if (clean.get(vertical.line()) || vertical.from().isPresent() || vertical.to().isPresent()) {
        several.set(vertical.line());
      }
      clean.set(vertical.line());
    }
    clean.andNot(several);
    for (Grid.Opening opening : wall.grid().openings()) {
      for (int i = 1; i < opening.bays().size(); i++) {
        clean.clear(wall.grid().bays().get(opening.bays().get(i)).left());
      }
    }
    clean.set(0);
    clean.set(Math.max(0, lines() - 1));
  }

  /**
   * Takes a ladder's lines for one panel if they are spliced unlike one another: its lengths side
   * by side go up as one frame, and which frames hold together is told only by going through them
   * all.
   */
  private void joinLadders() {
    int[] splices = null;
    for (Installation.Stretch stretch : wall.installation().stretches()) {
      if (stretch.method() == Installation.Method.LADDER) {
        splices = splices == null ? wall.members().splicesByLine(lines()) : splices;
        for (int line = stretch.firstLine() + 1; line <= stretch.lastLine(); line++) {
          if (splices[line] != splices[line - 1]) {
            clean.clear(stretch.firstLine() + 1, stretch.lastLine());
            break;
          }
        }
      }
    }
  }

  /** The panels touched, from the left; those beside one another as one. */
  private List<LineRange> touched(WallDifference difference, BitSet lines) {
    List<LineRange> ranges = new ArrayList<>();
    BitSet touched = difference.lines();
    touched.or(lines);
    touched.stream().forEach(line -> ranges.add(new LineRange(before(line), after(line))));
    for (int index : difference.bays().stream().toArray()) {
      Grid.Bay bay = wall.grid().bays().get(index);
      ranges.add(new LineRange(before(bay.right()), after(bay.left())));
    }
    ranges.sort((one, other) -> Integer.compare(one.first(), other.first()));
    List<LineRange> apart = new ArrayList<>();
    for (LineRange range : ranges) {
      int last = apart.size() - 1;
      if (last >= 0 && range.first() <= apart.get(last).last()) {
        LineRange left = apart.get(last);
        apart.set(last, new LineRange(left.first(), Math.max(left.last(), range.last())));
      } else {
        apart.add(range);
      }
    }
    return apart;
  }

  /** The clean line before a line. */
  private int before(int line) {
    return Math.max(0, clean.previousSetBit(line - 1));
  }

  private int after(int line) {
    int after = clean.nextSetBit(line + 1);
    return after < 0 ? lines() - 1 : after;
  }

  /** With one more panel at each end, or as many as lie within sight. */
  private LineRange around(LineRange told) {
    int first = before(told.first());
    while (first > 0 && x(told.first()).minus(x(first)).isShorterThan(SIGHT)) {
      first = before(first);
    }
    int last = after(told.last());
    while (last < lines() - 1 && x(last).minus(x(told.last())).isShorterThan(SIGHT)) {
      last = after(last);
    }
    return new LineRange(first, last);
  }

  private Length x(int line) {
    return wall.grid().lines().get(line).x();
  }
}
