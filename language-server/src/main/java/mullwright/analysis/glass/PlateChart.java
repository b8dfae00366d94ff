package mullwright.analysis.glass;

/**
 * Resistance and deflection of a lite read between the points of a table: near enough to tell at
 * once that a lite is well within its limits, and no more.
 *
 * <p>Table of J and of centre deflection over thickness by q̂ = q(ab)²/(E t⁴) and long over short
 * side, for ν = 0.22; linear in ln q̂ and in the ratio, below q̂ = 2 as a plate without membrane
 * forces. Within 5 % of {@link GlassFailurePrediction} and {@link LargeDeflectionPlate} for ratios
 * up to 5 and q̂ up to 1000; beyond, not a number. Source: series solution of the same equations.
 */
public final class PlateChart {
  private static final double[] RATIOS = {1, 1.25, 1.5, 2, 2.5, 3, 4, 5};
  private static final double[] LOADS = {2, 5, 10, 20, 50, 100, 200, 500, 1000};

  private static final double[][] RISK = {
    {-6.16, -6.19, -6.32, -6.92, -7.73, -8.59, -10.18, -11.55},
    {0.27, 0.24, 0.10, -0.50, -1.32, -2.17, -3.77, -5.13},
    {5.05, 5.03, 4.92, 4.35, 3.54, 2.68, 1.08, -0.28},
    {9.51, 9.55, 9.54, 9.13, 8.37, 7.53, 5.94, 4.57},
    {14.50, 14.63, 14.88, 15.08, 14.65, 13.91, 12.35, 10.99},
    {17.78, 17.92, 18.25, 18.94, 19.07, 18.62, 17.19, 15.84},
    {21.13, 21.19, 21.41, 22.22, 22.90, 23.00, 21.99, 20.68},
    {25.94, 25.92, 25.92, 26.25, 27.07, 27.81, 28.00, 27.04},
    {29.79, 29.76, 29.71, 29.67, 30.04, 30.82, 31.87, 31.65}
  };

  private static final double[][] BEND = {
    {0.093, 0.088, 0.078, 0.058, 0.042, 0.031, 0.018, 0.012},
    {0.230, 0.218, 0.195, 0.144, 0.105, 0.078, 0.046, 0.030},
    {0.447, 0.427, 0.385, 0.288, 0.210, 0.155, 0.091, 0.059},
    {0.822, 0.796, 0.733, 0.566, 0.418, 0.310, 0.183, 0.118},
    {1.59, 1.58, 1.53, 1.31, 1.02, 0.771, 0.458, 0.296},
    {2.39, 2.39, 2.39, 2.24, 1.91, 1.51, 0.918, 0.593},
    {3.42, 3.45, 3.50, 3.51, 3.28, 2.83, 1.84, 1.19},
    {5.30, 5.38, 5.53, 5.80, 5.84, 5.59, 4.38, 3.02},
    {7.26, 7.38, 7.63, 8.13, 8.44, 8.48, 7.62, 5.91}
  };

  /** Slope of J over ln q̂ without membrane forces. */
  private static final double LINEAR = 7;

  /** How far in J the slope is taken to either side. */
  private static final double SLOPE_REACH = 1;

  private PlateChart() {}

  /** Non-factored load of a lite [Pa], about; not a number outside the table. */
  public static double nonFactoredLoad(GlassFailurePrediction.Lite lite) {
    return intensityAt(lite) / intensity(lite.width(), lite.height(), lite.thickness());
  }

  /** Load intensity q̂ of that load, about; not a number outside the table. */
  static double intensityAt(GlassFailurePrediction.Lite lite) {
    return intensityAt(ratio(lite.width(), lite.height()), lite.target());
  }

  /** Slope of J over ln q̂ where the lite fails, about; not a number outside the table. */
  static double slopeAt(GlassFailurePrediction.Lite lite) {
    double ratio = ratio(lite.width(), lite.height());
    double below = StrictMath.log(intensityAt(ratio, lite.target() - SLOPE_REACH));
    double above = StrictMath.log(intensityAt(ratio, lite.target() + SLOPE_REACH));
    return 2 * SLOPE_REACH / (above - below);
  }

  private static double intensityAt(double ratio, double target) {
    double load = Double.NaN;
    double below = at(RISK[0], ratio);
    if (target <= below) {
      load = StrictMath.log(LOADS[0]) - (below - target) / LINEAR;
    }
    for (int i = 1; i < LOADS.length && Double.isNaN(load); i++) {
      double above = at(RISK[i], ratio);
      if (target <= above) {
        load = between(i, (target - below) / (above - below));
      }
      below = above;
    }
    return StrictMath.exp(load);
  }

  private static double between(int upper, double way) {
    double from = StrictMath.log(LOADS[upper - 1]);
    return from + way * (StrictMath.log(LOADS[upper]) - from);
  }

  /**
   * Centre deflection under a pressure [m], about; not a number outside the table.
   *
   * @param pressure [Pa]
   */
  public static double deflection(double width, double height, double thickness, double pressure) {
    double ratio = ratio(width, height);
    double load = pressure * intensity(width, height, thickness);
    if (load <= LOADS[0]) {
      return thickness * at(BEND[0], ratio) * load / LOADS[0];
    }
    for (int i = 1; i < LOADS.length; i++) {
      if (load <= LOADS[i]) {
        double way = StrictMath.log(load / LOADS[i - 1]) / StrictMath.log(LOADS[i] / LOADS[i - 1]);
        double from = StrictMath.log(at(BEND[i - 1], ratio));
        double to = StrictMath.log(at(BEND[i], ratio));
        return thickness * StrictMath.exp(from + way * (to - from));
      }
    }
    return Double.NaN;
  }

  private static double ratio(double width, double height) {
    return Math.max(width, height) / Math.min(width, height);
  }

  private static double intensity(double width, double height, double thickness) {
    double area = width * height;
    double square = thickness * thickness;
    return area * area / (GlassFailurePrediction.YOUNGS_MODULUS * square * square);
  }

  private static double at(double[] row, double ratio) {
    for (int i = 1; i < RATIOS.length; i++) {
      if (ratio <= RATIOS[i]) {
        double way = (ratio - RATIOS[i - 1]) / (RATIOS[i] - RATIOS[i - 1]);
        return row[i - 1] + way * (row[i] - row[i - 1]);
      }
    }
    // a hair beyond the last column by rounding
    return ratio < RATIOS[RATIOS.length - 1] + 1e-9 ? row[row.length - 1] : Double.NaN;
  }
}
