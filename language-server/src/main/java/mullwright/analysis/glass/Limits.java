package mullwright.analysis.glass;

/**
 * Comparisons with limits stated in inches: what was converted to metres and back must not slip
 * over the limit by the last bit, so a billionth counts as equal.
 */
final class Limits {
  private static final double SAME = 1e-9;

  private Limits() {}

  static boolean below(double value, double limit) {
    return value < limit - SAME;
  }

  static boolean above(double value, double limit) {
    return value > limit + SAME;
  }
}
