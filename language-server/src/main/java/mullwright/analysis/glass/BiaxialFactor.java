package mullwright.analysis.glass;

/**
 * Biaxial stress correction of the glass failure prediction model, raised to the model's exponent.
 *
 * <p>Surface flaws lie in every direction. With n = σ₂/σ₁ (σ₁ the larger principal stress, in
 * tension), c⁷ = (2/π)∫(cos²θ + n·sin²θ)⁷dθ from 0 to θm; θm = π/2 for n ≥ 0, else the angle where
 * the stress across the flaw turns to compression. c⁷ is 1 for n = 1. Source: ASTM E1300, basis of
 * the non-factored load charts; m = 7.
 */
final class BiaxialFactor {
  private static final int EXPONENT = 7;
  private static final GaussRule RULE = GaussRule.of(12);
  private static final double[] WEIGHTS = weights();

  private BiaxialFactor() {}

  /** c⁷ for a stress ratio n ≤ 1. */
  static double toTheSeventh(double ratio) {
    if (ratio >= 0) {
      double sum = 0;
      for (int k = EXPONENT; k >= 0; k--) {
        sum = sum * ratio + WEIGHTS[k];
      }
      return sum;
    }
    double end = StrictMath.atan(1 / Math.sqrt(-ratio));
    double sum = 0;
    for (int p = 0; p < RULE.count(); p++) {
      double cos = StrictMath.cos(end * RULE.points()[p]);
      double across = cos * cos + ratio * (1 - cos * cos);
      double square = across * across;
      sum += RULE.weights()[p] * square * square * square * across;
    }
    return 2 / StrictMath.PI * end * sum;
  }

  /** Binomial coefficient times the mean of cos^(14−2k)·sin^(2k) over a quarter turn. */
  private static double[] weights() {
    double[] weights = new double[EXPONENT + 1];
    for (int k = 0; k <= EXPONENT; k++) {
      double choose = 1;
      double mean = 1;
      for (int j = 1; j <= k; j++) {
        choose *= (double) (EXPONENT - k + j) / j;
      }
      for (int j = 1; j <= EXPONENT; j++) {
        // (2k−1)!!(13−2k)!! over 14!!, factor by factor
        double odd = j <= k ? 2 * j - 1 : 2 * (j - k) - 1;
        mean *= odd / (2 * j);
      }
      weights[k] = choose * mean;
    }
    return weights;
  }
}
