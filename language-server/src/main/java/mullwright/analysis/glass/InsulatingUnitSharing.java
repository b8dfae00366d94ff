package mullwright.analysis.glass;

import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Share of an outside pressure that each lite of a sealed double unit takes, with the stiffness of
 * the gas between them, by EN 16612, annex C.
 *
 * <p>δᵢ = hᵢ³/(h₁³+h₂³); a* = 28.9·[s·h₁³h₂³/((h₁³+h₂³)k₅)]^¼; φ = 1/(1+(a/a*)⁴); the loaded lite
 * takes δ₁ + φδ₂ of the pressure on it, the other (1−φ)δ₂. h lite thicknesses [m], s cavity width
 * [m], a short side [m], k₅ small-load volume coefficient of {@link PlateClosedForm}, φ insulating
 * unit factor: near 0 for large units, whose gas carries the load across, towards 1 for small stiff
 * ones, whose lites then work almost alone.
 *
 * <p>Range: 0.2 ≤ short/long side, thickness ratio up to 4, monolithic lites. The linear volume
 * coefficient holds for small deflections; larger ones make φ smaller. Source: EN 16612:2019, annex
 * C.
 */
public final class InsulatingUnitSharing {
  /** ∜(70 GPa over the 100 kPa of the enclosed gas), the standard's own rounding. */
  private static final double GAS = 28.9;

  private static final double LARGEST_RATIO = 4;
  private static final double LEAST_ASPECT = 0.2;

  private InsulatingUnitSharing() {}

  /**
   * A double unit.
   *
   * @param width one side [m]
   * @param height the other side [m]
   * @param loaded thickness of the lite under the pressure [m]
   * @param other thickness of the other lite [m]
   * @param cavity width of the cavity [m]
   */
  public record Unit(double width, double height, double loaded, double other, double cavity) {}

  /**
   * How the pressure divides.
   *
   * @param characteristicLength a* [m]
   * @param unitFactor φ, 0 to 1
   * @param loaded share of the lite under the pressure
   * @param other share of the other lite
   */
  public record Shares(
      double characteristicLength, double unitFactor, double loaded, double other) {}

  /** Shares of the two lites, which add up to 1. */
  public static Outcome<Shares> solve(Unit unit) {
    double a = Math.min(unit.width(), unit.height());
    double aspect = a / Math.max(unit.width(), unit.height());
    double ratio = Math.max(unit.loaded(), unit.other()) / Math.min(unit.loaded(), unit.other());
    return Guard.range()
        .positive("width", unit.width(), "m")
        .positive("height", unit.height(), "m")
        .positive("thickness of the loaded lite", unit.loaded(), "m")
        .positive("thickness of the other lite", unit.other(), "m")
        .positive("cavity width", unit.cavity(), "m")
        .that(aspect >= LEAST_ASPECT, "short side over long side", aspect, "", "at least 0.2")
        .that(ratio <= LARGEST_RATIO, "ratio of the two thicknesses", ratio, "", "at most 4")
        .then(() -> shares(unit, a, aspect));
  }

  private static Shares shares(Unit unit, double a, double aspect) {
    double loaded = unit.loaded() * unit.loaded() * unit.loaded();
    double other = unit.other() * unit.other() * unit.other();
    double both = loaded + other;
    double volume = PlateClosedForm.volumeCoefficient(aspect);
    double length = GAS * Math.sqrt(Math.sqrt(unit.cavity() * loaded * other / (both * volume)));
    double relative = a / length;
    double factor = 1 / (1 + relative * relative * relative * relative);
    return new Shares(
        length, factor, loaded / both + factor * other / both, (1 - factor) * other / both);
  }
}
