package mullwright.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiConsumer;
import mullwright.quantity.Length;

/**
 * Tells where plates and caps lie: not where a door or a void (or nothing) is on both sides of a
 * member.
 */
final class BareStretches {
  /** A stretch of height. */
  private record Stretch(Length from, Length to) {}

  private final Frame frame;

  /** By bay: true if no door or void is in it. */
  private final boolean[] none;

  /** The stretches of the line asked for last, of verticals with such half a face. */
  private List<Stretch> known = List.of();

  private int line = -1;
  private Length half;

  BareStretches(Frame frame) {
    this.frame = frame;
    this.none = new boolean[frame.grid.bays().size()];
    for (int bay = 0; bay < none.length; bay++) {
      none[bay] = frame.openings.of(bay).stream().noneMatch(Span::bare);
    }
  }

  /** Hands on the stretches of a vertical that are covered, from below. */
  void covered(VerticalPiece piece, BiConsumer<Length, Length> take) {
    int left = frame.lines.bay(piece.line(), Side.LEFT);
    int right = frame.lines.bay(piece.line(), Side.RIGHT);
    if ((left < 0 || none(left)) && (right < 0 || none(right))) {
      take.accept(piece.bottom(), piece.top());
      return;
    }
    Length from = piece.bottom();
    for (Stretch stretch : bare(piece.line(), piece.profile().face().value().half())) {
      Length to = Length.min(stretch.from(), piece.top());
      if (from.isShorterThan(to)) {
        take.accept(from, to);
      }
      from = Length.max(from, stretch.to());
    }
    if (from.isShorterThan(piece.top())) {
      take.accept(from, piece.top());
    }
  }

  /** True if a horizontal has something set in the frame below or above it. */
  boolean covered(HorizontalPiece piece) {
    for (int bay = piece.firstBay(); bay <= piece.lastBay(); bay++) {
      List<Bar> bars = frame.bars.ofBay(bay);
      if (none(bay)) {
        if (bars.size() > 1) {
          return true;
        }
        continue;
      }
      int at = frame.bars.place(frame.bars.in(bay, piece.row()));
      Length y = bars.get(at).middle();
      Length below = at > 0 ? bars.get(at - 1).middle() : Run.FAR.negated();
      Length above = at + 1 < bars.size() ? bars.get(at + 1).middle() : Run.FAR;
      if (set(bay, below, y, y, at > 0) || set(bay, y, above, y, at + 1 < bars.size())) {
        return true;
      }
    }
    return false;
  }

  // what fills the space between a bar at height y and its neighbour: an opening, or a lite if
  // there is a neighbour at all
  private boolean set(int bay, Length from, Length to, Length y, boolean neighbour) {
    List<Span> there = frame.openings.of(bay, from, to);
    if (there.isEmpty()) {
      return neighbour;
    }
    Span span = there.get(0);
    return !span.bare() && (span.top().equals(y) || span.bottom().equals(y));
  }

  private boolean none(int bay) {
    return none[bay];
  }

  private List<Stretch> bare(int line, Length half) {
    if (line != this.line || !half.equals(this.half)) {
      this.line = line;
      this.half = half;
      known = both(bare(line, half, Side.LEFT), bare(line, half, Side.RIGHT));
    }
    return known;
  }

  // beside a sloped horizontal a stretch is bare only where it is so over the whole of the
  // vertical's face on that side: what covers the rest has its longest length, as the vertical has
  private List<Stretch> bare(int line, Length half, Side side) {
    List<Stretch> bare = new ArrayList<>();
    int bay = frame.lines.bay(line, side);
    List<Bar> bars = bay < 0 ? List.of() : frame.bars.ofBay(bay);
    if (bars.isEmpty()) {
      bare.add(new Stretch(Run.FAR.negated(), Run.FAR));
      return bare;
    }
    Length near = frame.lines.near(line, side, half);
    Length far = frame.lines.far(line, side, half);
    Length lowest = Length.min(bars.get(0).lowerEdge(near), bars.get(0).lowerEdge(far));
    Bar last = bars.get(bars.size() - 1);
    Length highest = Length.max(last.upperEdge(near), last.upperEdge(far));
    for (Span span : frame.openings.of(bay)) {
      if (!span.bare()) {
        lowest = Length.min(lowest, span.bottom());
        highest = Length.max(highest, span.top());
      } else {
        bare.add(
            new Stretch(
                span.sill()
                    .map(bar -> Length.max(bar.upperEdge(near), bar.upperEdge(far)))
                    .orElse(span.bottom()),
                span.head()
                    .map(bar -> Length.min(bar.lowerEdge(near), bar.lowerEdge(far)))
                    .orElse(span.top())));
      }
    }
    bare.add(new Stretch(Run.FAR.negated(), lowest));
    bare.add(new Stretch(highest, Run.FAR));
    return bare;
  }

  private static List<Stretch> both(List<Stretch> left, List<Stretch> right) {
    List<Stretch> both = new ArrayList<>();
    for (Stretch one : left) {
      for (Stretch other : right) {
        Length from = Length.max(one.from(), other.from());
        Length to = Length.min(one.to(), other.to());
        if (from.isShorterThan(to)) {
          both.add(new Stretch(from, to));
        }
      }
    }
    both.sort(Comparator.comparing(Stretch::from));
    return both;
  }
}
