package mullwright.quantity;

import java.util.ArrayList;
import java.util.List;

/**
 * Rounds a chain of dimensions so that the printed parts add up to the printed overall.
 *
 * <p>The running positions are rounded, and their differences printed (common practice). Rounding
 * each part alone would not add up.
 */
public final class ChainRounding {
  private ChainRounding() {}

  /** The parts as they are to be printed, each a multiple of the step, at most one step off. */
  public static List<Length> parts(List<Length> parts, Length step) {
    List<Length> rounded = new ArrayList<>(parts.size());
    Length position = Length.ZERO;
    Length printed = Length.ZERO;
    for (Length part : parts) {
      position = position.plus(part);
      Length next = Rounding.NEAREST.round(position, step);
      rounded.add(next.minus(printed));
      printed = next;
    }
    return List.copyOf(rounded);
  }
}
