package mullwright.layout;

import java.util.List;
import java.util.Optional;
import mullwright.model.Height;
import mullwright.quantity.Length;

/**
 * Where a vertical's lower or upper end is.
 *
 * <p>Under a sloped horizontal the end is the furthest point of the sloped cut, so that the piece
 * has its longest length.
 */
final class RunEnds {
  /**
   * An end.
   *
   * @param known false if it hangs on a profile nobody knows, or on nothing at all
   */
  record End(Length height, boolean known) {}

  private final Lines lines;
  private final Bars bars;
  private final OpeningsCut openings;

  RunEnds(Lines lines, Bars bars, OpeningsCut openings) {
    this.lines = lines;
    this.bars = bars;
    this.openings = openings;
  }

  /** The lower end of a vertical with such half a face; stated, or full height. */
  End bottom(int line, Length half, Optional<Height> stated) {
    return end(line, half, stated, true);
  }

  /** The upper end. */
  End top(int line, Length half, Optional<Height> stated) {
    return end(line, half, stated, false);
  }

  private End end(int line, Length half, Optional<Height> stated, boolean bottom) {
    if (stated.isEmpty()) {
      return full(line, half, bottom);
    }
    Furthest at = new Furthest(bottom);
    Length y = null;
    for (Side side : Side.values()) {
      Optional<Bar> named = bars.named(stated.get(), lines.bay(line, side));
      if (named.isPresent()) {
        Bar bar = named.get();
        y = bar.yAt(lines.x(line));
        // butting from above it ends at the upper edge, from below at the lower
        at.add(edge(bar, near(line, side, half), !bottom), bar.widths().known());
        at.add(edge(bar, far(line, side, half), !bottom), true);
      }
    }
    if (y == null) {
      return new End(stated.get().elevation(), true);
    }
    return anyBeyond(line, y, bottom) ? at.end() : full(line, half, bottom);
  }

  private End full(int line, Length half, boolean bottom) {
    Furthest at = new Furthest(bottom);
    for (Side side : Side.values()) {
      int bay = lines.bay(line, side);
      if (bay < 0) {
        continue;
      }
      List<Bar> all = bars.ofBay(bay);
      if (!all.isEmpty()) {
        Bar last = all.get(bottom ? 0 : all.size() - 1);
        at.add(edge(last, near(line, side, half), bottom), last.widths().known());
        at.add(edge(last, far(line, side, half), bottom), true);
      }
      for (Span span : openings.of(bay)) {
        if (bottom ? span.openBelow() : span.openAbove()) {
          at.add(bottom ? span.bottom() : span.top(), true);
        }
      }
    }
    return at.end();
  }

  private boolean anyBeyond(int line, Length y, boolean bottom) {
    for (Side side : Side.values()) {
      int bay = lines.bay(line, side);
      if (bay < 0) {
        continue;
      }
      for (Bar bar : bars.ofBay(bay)) {
        if (beyond(bar.yAt(lines.x(line)), y, bottom)) {
          return true;
        }
      }
      for (Span span : openings.of(bay)) {
        if (beyond(bottom ? span.bottom() : span.top(), y, bottom)) {
          return true;
        }
      }
    }
    return false;
  }

  private static boolean beyond(Length one, Length other, boolean bottom) {
    return bottom ? one.isShorterThan(other) : one.isLongerThan(other);
  }

  private static Length edge(Bar bar, Length x, boolean lower) {
    return lower ? bar.lowerEdge(x) : bar.upperEdge(x);
  }

  // the edge of the vertical's face in that bay
  private Length near(int line, Side side, Length half) {
    return side == Side.LEFT ? lines.x(line).minus(half) : lines.x(line).plus(half);
  }

  // its centre, where the other bay's horizontal takes over; its outer edge if there is no other
  private Length far(int line, Side side, Length half) {
    Side other = side == Side.LEFT ? Side.RIGHT : Side.LEFT;
    return lines.bay(line, other) >= 0 ? lines.x(line) : near(line, other, half);
  }

  /** Keeps the lowest (or highest) of the heights it is given. */
  private static final class Furthest {
    private final boolean lowest;
    private Length height;
    private boolean known = true;

    Furthest(boolean lowest) {
      this.lowest = lowest;
    }

    void add(Length candidate, boolean candidateKnown) {
      known &= candidateKnown;
      if (height == null) {
        height = candidate;
      } else {
        height = lowest ? Length.min(height, candidate) : Length.max(height, candidate);
      }
    }

    End end() {
      return height == null
          ? new End(lowest ? Run.FAR.negated() : Run.FAR, false)
          : new End(height, known);
    }
  }
}
