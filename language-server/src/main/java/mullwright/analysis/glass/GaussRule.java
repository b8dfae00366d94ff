package mullwright.analysis.glass;

/**
 * Gauss-Legendre points and weights on the interval from 0 to 1, for integrals over a quarter
 * plate.
 *
 * @param points places, increasing
 * @param weights their weights, sum 1
 */
record GaussRule(double[] points, double[] weights) {

  /** The rule with the given number of points; exact for polynomials of degree 2 count − 1. */
  static GaussRule of(int count) {
    double[] points = new double[count];
    double[] weights = new double[count];
    for (int i = 0; i < count; i++) {
      double x = -StrictMath.cos(StrictMath.PI * (i + 0.75) / (count + 0.5));
      double slope = 1;
      for (int step = 0; step < 30; step++) {
        double before = 1;
        double value = x;
        for (int n = 1; n < count; n++) {
          double next = ((2 * n + 1) * x * value - n * before) / (n + 1);
          before = value;
          value = next;
        }
        slope = count * (x * value - before) / (x * x - 1);
        double move = value / slope;
        x -= move;
        if (Math.abs(move) < 1e-15) {
          break;
        }
      }
      points[i] = (x + 1) / 2;
      weights[i] = 1 / ((1 - x * x) * slope * slope);
    }
    return new GaussRule(points, weights);
  }

  int count() {
    return points.length;
  }
}
