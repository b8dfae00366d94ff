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
  private static final double[] WEIGHTS = weights();
  private static final double[] TURNED = turned();

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
    double share = 1 / (1 - ratio);
    double sum = 0;
    for (int k = TURNED.length - 1; k >= 0; k--) {
      sum = sum * share + TURNED[k];
    }
    return sum * Math.sqrt(share);
  }

  /**
   * For n < 0, with s = 1/(1 − n) = sin²θm and sin θ = √s·u: c⁷ = (2/π)√s ∫(1 − u²)⁷/√(1 − s·u²) du
   * from 0 to 1. The root as a series in s leaves beta functions, which fall fast.
   */
  private static double[] turned() {
    double[] terms = new double[30];
    // (2/π)∫(1−u²)⁷du, then each from the one before: ((2k−1)/(2k))² · 2k/(2k+15)
    double term = 2 / StrictMath.PI * 2048 / 6435;
    for (int k = 0; k < terms.length; k++) {
      terms[k] = term;
      double odd = 2 * k + 1;
      term *= odd / (odd + 1) * odd / (odd + 16);
    }
    return terms;
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
