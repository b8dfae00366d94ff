package mullwright.analysis.wind;

/** Editions of ASCE 7 that differ in the velocity profile. */
public enum WindEdition {
  /** ASCE 7-16: K_z = 2.01(z/z_g)^(2/α). */
  ASCE_7_16(2.01, new double[] {7.0, 9.5, 11.5}, new double[] {1200, 900, 700}),
  /** ASCE 7-22: K_z = 2.41(z/z_g)^(2/α). */
  ASCE_7_22(2.41, new double[] {7.5, 9.8, 11.5}, new double[] {3280, 2460, 1935});

  private static final double FOOT = 0.3048;

  private final double factor;
  private final double[] exponents;
  private final double[] gradientHeights;

  WindEdition(double factor, double[] exponents, double[] gradientHeights) {
    this.factor = factor;
    this.exponents = exponents;
    this.gradientHeights = gradientHeights;
  }

  double factor() {
    return factor;
  }

  double exponent(Exposure exposure) {
    return exponents[exposure.ordinal()];
  }

  /** Gradient height z_g [m]. */
  double gradientHeight(Exposure exposure) {
    return gradientHeights[exposure.ordinal()] * FOOT;
  }
}
