package mullwright.analysis.beam;

import java.util.Arrays;

/**
 * The exact polynomials on one piece of a beam; letters as in {@link HingedBeam}.
 *
 * @param rigidity EI [N·m²]
 * @param v0 deflection at its start [m]
 * @param t0 slope at its start
 * @param m0 moment at its start [N·m]
 * @param q0 shear at its start [N]
 * @param w line load at its start [N/m]
 * @param g gradient of the line load [N/m²]
 */
record Piece(double rigidity, double v0, double t0, double m0, double q0, double w, double g) {
  private static final int MOST_STEPS = 200;

  double shear(double s) {
    return q0 - s * (w + s * g / 2);
  }

  double moment(double s) {
    return m0 + s * (q0 - s * (w / 2 + s * g / 6));
  }

  double slope(double s) {
    return t0 - s * (m0 + s * (q0 / 2 - s * (w / 6 + s * g / 24))) / rigidity;
  }

  double deflection(double s) {
    return v0 + s * (t0 - s * (m0 / 2 + s * (q0 / 6 - s * (w / 24 + s * g / 120))) / rigidity);
  }

  /** Where the line load changes sign between two places, between which it is monotone. */
  double[] loadRoots(double low, double high) {
    double root = -w / g;
    return root > low && root < high ? new double[] {low, root, high} : new double[] {low, high};
  }

  /** The two places and, between them, where the shear is nil. */
  double[] shearRoots(double low, double high) {
    return roots(Curve.SHEAR, 0, loadRoots(low, high));
  }

  /** The two places and, between them, where the slope has a given value. */
  double[] slopeRoots(double slope, double low, double high) {
    double[] monotoneMoment = shearRoots(low, high);
    double[] monotoneSlope = roots(Curve.MOMENT, 0, monotoneMoment);
    return roots(Curve.SLOPE, slope, monotoneSlope);
  }

  private enum Curve {
    SHEAR,
    MOMENT,
    SLOPE
  }

  private double value(Curve curve, double s) {
    return curve == Curve.SHEAR ? shear(s) : curve == Curve.MOMENT ? moment(s) : slope(s);
  }

  private double derivative(Curve curve, double s) {
    return curve == Curve.SHEAR
        ? -w - g * s
        : curve == Curve.MOMENT ? shear(s) : -moment(s) / rigidity;
  }

  /** First and last cut, and between each two neighbours the one root of a monotone curve. */
  private double[] roots(Curve curve, double level, double[] cuts) {
    double[] found = new double[cuts.length + 1];
    int count = 0;
    found[count++] = cuts[0];
    for (int i = 0; i + 1 < cuts.length; i++) {
      double before = value(curve, cuts[i]) - level;
      double after = value(curve, cuts[i + 1]) - level;
      if (before < 0 && after > 0 || before > 0 && after < 0) {
        found[count++] = root(curve, level, cuts[i], cuts[i + 1], before < 0);
      } else if (after == 0 && i + 2 < cuts.length) {
        found[count++] = cuts[i + 1];
      }
    }
    found[count++] = cuts[cuts.length - 1];
    return Arrays.copyOf(found, count);
  }

  /** Newton's method, halving the bracket whenever a step would leave it. */
  private double root(Curve curve, double level, double low, double high, boolean rising) {
    double left = low;
    double right = high;
    double s = (left + right) / 2;
    for (int step = 0; step < MOST_STEPS; step++) {
      double f = value(curve, s) - level;
      if (f == 0) {
        return s;
      }
      if (f < 0 == rising) {
        left = s;
      } else {
        right = s;
      }
      double next = s - f / derivative(curve, s);
      if (!(next > left && next < right)) {
        next = (left + right) / 2;
      }
      if (Math.abs(next - s) <= Math.ulp(s)) {
        return next;
      }
      s = next;
    }
    return s;
  }
}
