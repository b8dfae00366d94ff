package mullwright.review;

import java.util.List;
import java.util.Optional;
import mullwright.quantity.Length;

/**
 * A piece that came, went or is made another way.
 *
 * @param before empty if it is new, {@code after} empty if it is gone
 * @param causes the changes that explain it, by index in the wall's list; never empty
 */
public record PieceChange(
    PieceKey key, Optional<PieceState> before, Optional<PieceState> after, List<Integer> causes) {
  public PieceChange {
    causes = List.copyOf(causes);
  }

  /** What happened to a piece. */
  public enum What {
    NEW,
    CHANGED,
    GONE
  }

  public What what() {
    return before.isEmpty() ? What.NEW : after.isEmpty() ? What.GONE : What.CHANGED;
  }

  /** The piece as it is, or as it was if it is gone. */
  public PieceState state() {
    return after.or(() -> before).orElseThrow();
  }

  /** By how much it grew in length or width; zero if it came or went. */
  public Length longer() {
    return before.isEmpty() || after.isEmpty()
        ? Length.ZERO
        : after.get().make().length().minus(before.get().make().length());
  }

  /** By how much it grew in height; zero for all but glass. */
  public Length taller() {
    return before.isEmpty() || after.isEmpty()
        ? Length.ZERO
        : after
            .get()
            .make()
            .height()
            .orElse(Length.ZERO)
            .minus(before.get().make().height().orElse(Length.ZERO));
  }

  /** True if its part is another. */
  public boolean otherPart() {
    return before.isPresent()
        && after.isPresent()
        && !before.get().make().part().equals(after.get().make().part());
  }

  /** True if only what is fixed to it changed. */
  public boolean onlyFixings() {
    return what() == What.CHANGED
        && !otherPart()
        && longer().signum() == 0
        && taller().signum() == 0;
  }
}
