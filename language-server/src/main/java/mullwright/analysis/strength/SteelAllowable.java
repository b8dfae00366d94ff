package mullwright.analysis.strength;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Allowable bending stress of steel reinforcement: 0.6·F_y.
 *
 * <p>F_y yield strength [Pa]. Range: compact, braced by the member it stands in. Source: common
 * practice (allowable-stress design).
 */
public final class SteelAllowable {
  /** 0.6·F_y. */
  public static final Formula STRESS = new Formula("0.6 × yield strength", "common practice");

  private SteelAllowable() {}

  /**
   * The limit.
   *
   * @param yield yield strength put in [Pa]
   * @param stress allowable stress [Pa]
   */
  public record Result(double yield, double stress) {}

  /** Computes the limit for a yield strength [Pa]. */
  public static Outcome<Result> solve(double yield) {
    return Guard.range()
        .positive("yield strength", yield, "Pa")
        .then(() -> new Result(yield, 0.6 * yield));
  }
}
