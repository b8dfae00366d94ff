package mullwright.layout;

import java.util.List;
import mullwright.quantity.Length;

/**
 * Tells where a vertical has glass, louvres or panels beside it, and where a door, a void, or
 * nothing.
 */
final class BaySides {
  private final Frame frame;

  BaySides(Frame frame) {
    this.frame = frame;
  }

  /** True if something is set in the frame on that side over some of that height. */
  boolean glazed(int line, Side side, Length from, Length to) {
    int bay = frame.lines.bay(line, side);
    if (bay < 0) {
      return false;
    }
    List<Bar> bars = frame.bars.ofBay(bay);
    if (frame.openings.of(bay).isEmpty()) {
      return bars.size() > 1 && overlap(bars.get(0), bars.get(bars.size() - 1), from, to);
    }
    for (Span span : frame.openings.of(bay, from, to)) {
      if (!span.bare()) {
        return true;
      }
    }
    for (int i = Math.max(1, frame.bars.over(bay, from)); i < bars.size(); i++) {
      Length below = bars.get(i - 1).middle();
      if (!below.isShorterThan(to)) {
        return false;
      }
      if (frame.openings.of(bay, below, bars.get(i).middle()).isEmpty()) {
        return true;
      }
    }
    return false;
  }

  private static boolean overlap(Bar below, Bar above, Length from, Length to) {
    return below.middle().isShorterThan(to) && from.isShorterThan(above.middle());
  }
}
