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
    List<Span> spans = frame.openings.of(bay);
    if (spans.isEmpty()) {
      return bars.size() > 1 && overlap(bars.get(0), bars.get(bars.size() - 1), from, to);
    }
    for (Span span : spans) {
      if (!span.bare() && span.overlaps(from, to)) {
        return true;
      }
    }
    for (int i = 1; i < bars.size(); i++) {
      Bar below = bars.get(i - 1);
      Bar above = bars.get(i);
      if (overlap(below, above, from, to)
          && spans.stream().noneMatch(span -> span.overlaps(below.middle(), above.middle()))) {
        return true;
      }
    }
    return false;
  }

  private static boolean overlap(Bar below, Bar above, Length from, Length to) {
    return below.middle().isShorterThan(to) && from.isShorterThan(above.middle());
  }
}
