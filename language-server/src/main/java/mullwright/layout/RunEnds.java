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
  private final Lines lines;
  private final Bars bars;
  private final OpeningsCut openings;

  RunEnds(Lines lines, Bars bars, OpeningsCut openings) {
    this.lines = lines;
    this.bars = bars;
    this.openings = openings;
  }

  /** The lower end of a vertical with such half a face; stated, or full height. */
  RunEnd bottom(int line, Length half, Optional<Height> stated) {
    return end(line, half, stated, true);
  }

  /** The upper end. */
  RunEnd top(int line, Length half, Optional<Height> stated) {
    return end(line, half, stated, false);
  }

  private RunEnd end(int line, Length half, Optional<Height> stated, boolean bottom) {
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
        at.add(bar, lines.near(line, side, half), !bottom);
        at.add(bar, lines.far(line, side, half), !bottom);
      }
    }
    if (y == null) {
      return RunEnd.stated(stated.get().elevation(), stated.get());
    }
    return anyBeyond(line, y, bottom) ? at.end() : full(line, half, bottom);
  }

  private RunEnd full(int line, Length half, boolean bottom) {
    Furthest at = new Furthest(bottom);
    for (Side side : Side.values()) {
      int bay = lines.bay(line, side);
      if (bay < 0) {
        continue;
      }
      List<Bar> all = bars.ofBay(bay);
      if (!all.isEmpty()) {
        Bar last = all.get(bottom ? 0 : all.size() - 1);
        at.add(last, lines.near(line, side, half), bottom);
        at.add(last, lines.far(line, side, half), bottom);
      }
      for (Span span : openings.of(bay)) {
        if (bottom ? span.openBelow() : span.openAbove()) {
          at.add(
              bottom
                  ? RunEnd.stated(span.bottom(), span.opening().bottom())
                  : RunEnd.stated(span.top(), span.opening().top()));
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

  /** Keeps the lowest (or highest) of the ends it is given. */
  private static final class Furthest {
    private final boolean lowest;
    private RunEnd end;
    private boolean known = true;

    Furthest(boolean lowest) {
      this.lowest = lowest;
    }

    void add(Bar bar, Length x, boolean lowerEdge) {
      add(RunEnd.at(bar, x, lowerEdge));
    }

    void add(RunEnd candidate) {
      known &= candidate.known();
      if (end == null || beyond(candidate.height(), end.height(), lowest)) {
        end = candidate;
      }
    }

    RunEnd end() {
      if (end == null) {
        return RunEnd.unknown(lowest);
      }
      return known ? end : end.doubtful();
    }
  }
}
