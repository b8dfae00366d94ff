package mullwright.review;

import java.util.Optional;
import mullwright.layout.PieceRef;

/**
 * An anchor or a splice that came, went or is another.
 *
 * @param before which one of the older layout, {@code after} which one of the newer
 */
public record FixingChange(Optional<PieceRef> before, Optional<PieceRef> after) {
  /** What happened to it. */
  public PieceChange.What what() {
    return before.isEmpty()
        ? PieceChange.What.NEW
        : after.isEmpty() ? PieceChange.What.GONE : PieceChange.What.CHANGED;
  }
}
