package mullwright.drawing.piece;

import java.util.List;
import java.util.Optional;
import mullwright.quantity.Length;

/**
 * A bar as the shop is told of it: equal pieces under one mark.
 *
 * @param upright true for a vertical, whose datum is its lower end; a horizontal's is its left end
 * @param mark of the pieces
 * @param kind in words: {@code vertical}
 * @param pieces as the shop names them
 * @param profile name of the profile
 * @param face width of the metal, {@code depth} of the profile, {@code plane} from the outer face
 *     of the glass to its back
 * @param length cut length
 * @param ends how the ends are cut, in words
 * @param first how much further along the first end is at the right or upper edge than at the
 *     other, {@code last} the same of the last end
 * @param holes from the datum
 * @param notch at both ends, if there is one
 * @param finish in words, or ""
 */
public record Bar(
    boolean upright,
    String mark,
    String kind,
    List<String> pieces,
    String profile,
    Length face,
    Length depth,
    Length plane,
    Length length,
    String ends,
    Length first,
    Length last,
    List<Hole> holes,
    Optional<Notch> notch,
    String finish) {
  public Bar {
    pieces = List.copyOf(pieces);
    holes = List.copyOf(holes);
  }

  /**
   * Holes at one place.
   *
   * @param what they are for: {@code shear block block-6}
   * @param side which wall: {@code left}, {@code right}, {@code left and right}, {@code through},
   *     or ""
   * @param along from the datum
   * @param back from the outer face of the glass; empty if nobody states it
   * @param diameter empty if the part states no pattern
   * @param fastener that goes through, or ""
   * @param count how many holes, 0 if the part is there and states no pattern
   */
  public record Hole(
      String what,
      String side,
      Length along,
      Optional<Length> back,
      Optional<Length> diameter,
      String fastener,
      int count) {
    /** True if there is something to drill at a known place. */
    boolean placed() {
      return back.isPresent() && diameter.isPresent();
    }
  }

  /** What is cut from each end: so far along, so far back from the glass side of the profile. */
  public record Notch(Length along, Length back) {}
}
