package mullwright.review;

import java.util.List;

/**
 * What an anchor carries before and after, at service level.
 *
 * @param anchor as the shop names it in the newer wall
 * @param direction {@code down}, {@code in} or {@code out}
 * @param before force [N], {@code after} force [N]
 * @param causes the changes that explain it, by index in the wall's list; never empty
 */
public record ReactionChange(
    String anchor, String direction, double before, double after, List<Integer> causes) {
  public ReactionChange {
    causes = List.copyOf(causes);
  }

  /** Growth as a share of what it was; positive infinity if it was nothing. */
  public double growth() {
    return before > 0 ? after / before - 1 : Double.POSITIVE_INFINITY;
  }

  /** True if it grew by more than that share of what it was. */
  public boolean grewOver(double share) {
    return after > before && growth() > share;
  }
}
