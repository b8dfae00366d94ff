package mullwright.layout;

import java.util.Optional;
import mullwright.model.Height;
import mullwright.quantity.Length;

/**
 * One end of a run of vertical, and what it ends at.
 *
 * @param height where it is
 * @param known false if it hangs on a profile nobody knows, or on nothing at all
 * @param bar the horizontal at whose edge it ends, if it does
 * @param lowerEdge true if that is the horizontal's lower edge
 * @param x where along the wall the end touches it: it matters where the horizontal slopes
 * @param stated the place the text states, if the end is there and at no horizontal
 */
record RunEnd(
    Length height,
    boolean known,
    Optional<Bar> bar,
    boolean lowerEdge,
    Length x,
    Optional<Height> stated) {
  /** At an edge of a horizontal. */
  static RunEnd at(Bar bar, Length x, boolean lowerEdge) {
    Length height = lowerEdge ? bar.lowerEdge(x) : bar.upperEdge(x);
    return new RunEnd(
        height, bar.widths().known(), Optional.of(bar), lowerEdge, x, Optional.empty());
  }

  /** At a stated place. */
  static RunEnd stated(Length height, Height place) {
    return new RunEnd(height, true, Optional.empty(), false, Length.ZERO, Optional.of(place));
  }

  /** Nobody knows where; as far as can be. */
  static RunEnd unknown(boolean bottom) {
    Length far = bottom ? Run.FAR.negated() : Run.FAR;
    return new RunEnd(far, false, Optional.empty(), false, Length.ZERO, Optional.empty());
  }

  /** The same, but not to be relied on. */
  RunEnd doubtful() {
    return new RunEnd(height, false, bar, lowerEdge, x, stated);
  }
}
