package mullwright.analysis.movement;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Gap at the head below a slab that sinks: slab deflection + thermal growth + tolerance.
 *
 * <p>Thermal growth is that of the length between its dead-load support and the head. Source:
 * common practice.
 */
public final class HeadGap {
  /** Slab, growth, tolerance. */
  public static final Formula NEEDED =
      new Formula("slab deflection + thermal growth + tolerance", "common practice");

  private HeadGap() {}

  /**
   * What the gap must take.
   *
   * @param slabDown how far the slab above sinks [m], 0 or more
   * @param thermalGrowth how far the head rises with heat [m], 0 or more
   * @param tolerance construction tolerance [m], 0 or more
   */
  public record Input(double slabDown, double thermalGrowth, double tolerance) {}

  /**
   * The gap.
   *
   * @param input what was put in
   * @param needed least gap when set [m]
   */
  public record Result(Input input, double needed) {}

  /** Computes the gap. */
  public static Outcome<Result> solve(Input in) {
    return Guard.range()
        .notNegative("slab deflection", in.slabDown(), "m")
        .notNegative("thermal growth", in.thermalGrowth(), "m")
        .notNegative("tolerance", in.tolerance(), "m")
        .then(() -> new Result(in, in.slabDown() + in.thermalGrowth() + in.tolerance()));
  }
}
