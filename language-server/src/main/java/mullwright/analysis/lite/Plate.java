package mullwright.analysis.lite;

import mullwright.analysis.Outcome;
import mullwright.analysis.glass.GlassFailurePrediction;
import mullwright.analysis.glass.LargeDeflectionPlate;
import mullwright.analysis.glass.PlateChart;

/**
 * A rectangular plate brought into the range of the plate methods, on the safe side.
 *
 * <p>A strip longer than five times its width bends as one of five times, and its chance of
 * breakage is that of its length: each part of it may break. A lite narrower than twenty times its
 * thickness is taken as that wide.
 *
 * @param longer long side [m]
 * @param shorter short side [m]
 * @param thickness thickness [m]
 * @param strips how often the plate of the method's range stands in the lite; 1 or more
 */
record Plate(double longer, double shorter, double thickness, double strips) {
  private static final double THINNEST = 20;

  static Plate of(double width, double height, double thickness) {
    double shorter = Math.max(Math.min(width, height), THINNEST * thickness);
    double whole = Math.max(Math.max(width, height), shorter);
    double longer = Math.min(whole, LargeDeflectionPlate.LARGEST_RATIO * shorter);
    return new Plate(longer, shorter, thickness, whole / longer);
  }

  /** Non-factored load for 3 s and 8 breakages in 1000. */
  Outcome<GlassFailurePrediction.Resistance> resistance() {
    return GlassFailurePrediction.solve(lite());
  }

  /** The same load read from a table, within 5 % [Pa]; not a number outside the table. */
  double chartedLoad() {
    return PlateChart.nonFactoredLoad(lite());
  }

  /** Deflection under a pressure read from a table, within 5 % [m]. */
  double chartedDeflection(double pressure) {
    return PlateChart.deflection(longer, shorter, thickness, pressure);
  }

  private GlassFailurePrediction.Lite lite() {
    double kept = 1 - GlassFailurePrediction.CHART_CHANCE;
    double chance =
        strips == 1 ? GlassFailurePrediction.CHART_CHANCE : 1 - StrictMath.pow(kept, 1 / strips);
    return new GlassFailurePrediction.Lite(
        longer, shorter, thickness, GlassFailurePrediction.CHART_DURATION, chance);
  }

  /** Deflection and stress under a pressure [Pa]. */
  Outcome<LargeDeflectionPlate.Response> under(double pressure) {
    return LargeDeflectionPlate.solve(
        new LargeDeflectionPlate.Lite(
            longer,
            shorter,
            thickness,
            GlassFailurePrediction.YOUNGS_MODULUS,
            GlassFailurePrediction.POISSONS_RATIO,
            pressure));
  }
}
