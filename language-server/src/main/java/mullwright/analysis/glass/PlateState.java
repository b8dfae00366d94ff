package mullwright.analysis.glass;

/**
 * Equilibrium of a plate at one load: the coefficients of its deflection and of its stress
 * function.
 *
 * @param ratio long side over short side
 * @param poisson Poisson's ratio
 * @param load q̂ = q(ab)²/(E t⁴)
 * @param waves coefficients of the deflection over the thickness
 * @param forces coefficients of the stress function over E t²
 */
record PlateState(double ratio, double poisson, double load, double[] waves, double[] forces) {

  /** Centre deflection over thickness. */
  double centreDeflection() {
    double sum = 0;
    for (double wave : waves) {
      sum += wave;
    }
    return sum;
  }
}
