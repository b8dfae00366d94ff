package mullwright.analysis.movement;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Gap a sleeve splice needs when it is set, so that it never closes.
 *
 * <p>gap ≥ α·D·(T_max − T_i) + δ_slab + creep + tolerance + residual.
 *
 * <p>Symbols: α expansion [1/K]; D distance between the dead-load supports on either side [m];
 * T_max, T_i temperature of the metal at its hottest and when set [K]; δ_slab sinking of the upper
 * support against the lower [m]; tolerance of cutting and erecting [m]; residual gap that must stay
 * [m], 1/16 to 1/8 in. Each length hangs from one dead-load support. Source: statics and common
 * practice.
 */
public final class SpliceGap {
  /** α·D·(T_max − T_i). */
  public static final Formula CLOSING =
      new Formula(
          "coefficient of expansion × distance between dead-load supports"
              + " × (hottest metal − metal when set)",
          "closed form");

  /** α·D·(T_i − T_min). */
  public static final Formula OPENING =
      new Formula(
          "coefficient of expansion × distance between dead-load supports"
              + " × (metal when set − coldest metal)",
          "closed form");

  /** Sum of what must fit. */
  public static final Formula NEEDED =
      new Formula(
          "thermal closing + slab deflection + shortening + tolerance + residual gap",
          "common practice");

  private SpliceGap() {}

  /**
   * What must fit into the gap.
   *
   * @param movement movement of the two sides
   * @param tolerance tolerance of cutting and erecting [m], 0 or more
   * @param residual gap that must be left at the worst [m], 0 or more
   */
  public record Input(SpliceMovement movement, double tolerance, double residual) {}

  /**
   * The gap.
   *
   * @param input what was put in
   * @param thermalClosing closing by heat alone [m]
   * @param thermalOpening opening by cold alone [m]
   * @param needed least gap to leave when setting [m], not rounded
   */
  public record Result(Input input, double thermalClosing, double thermalOpening, double needed) {}

  /** Computes the gap needed. */
  public static Outcome<Result> solve(Input in) {
    SpliceMovement movement = in.movement();
    return movement
        .check(Guard.range())
        .notNegative("tolerance", in.tolerance(), "m")
        .notNegative("residual gap", in.residual(), "m")
        .then(
            () ->
                new Result(
                    in,
                    movement.thermalClosing(),
                    movement.thermalOpening(),
                    movement.closing() + in.tolerance() + in.residual()));
  }
}
