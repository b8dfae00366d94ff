package mullwright.layout;

import java.util.Optional;
import mullwright.model.Origin;
import mullwright.quantity.Length;

/**
 * A piece the text asks for that cannot be: it is left out of the lists, and told here.
 *
 * @param name as the shop would name it
 * @param reason why it cannot be
 * @param length the length or height it would have (zero or less), where that is the reason
 * @param leftLine the line it would be on, or that at its left, by index
 * @param rightLine that at its right; of what would be on one line the same
 * @param origin the statement that asks for it
 */
public record Impossible(
    String name,
    Reason reason,
    Optional<Length> length,
    int leftLine,
    int rightLine,
    Origin origin) {
  /** Why a piece cannot be. */
  public enum Reason {
    /** Nothing is left between its neighbours. */
    NO_LENGTH,
    /** No vertical stands at one of its ends or edges. */
    NO_VERTICAL,
    /** An opening ends where no horizontal is, with frame beyond. */
    NO_HORIZONTAL,
    /**
     * A splice where no vertical passes, or too near an end or another splice to leave a length.
     */
    SPLICE_OUTSIDE,
    /** A horizontal that runs through under or over a vertical, of another profile in each bay. */
    TWO_PROFILES,
    /** An anchor measured from the underside of a slab whose depth is not stated. */
    NO_SLAB_DEPTH
  }

  static Impossible noLength(
      String name, Length length, int leftLine, int rightLine, Origin origin) {
    return new Impossible(name, Reason.NO_LENGTH, Optional.of(length), leftLine, rightLine, origin);
  }

  static Impossible because(
      Reason reason, String name, int leftLine, int rightLine, Origin origin) {
    return new Impossible(name, reason, Optional.empty(), leftLine, rightLine, origin);
  }
}
