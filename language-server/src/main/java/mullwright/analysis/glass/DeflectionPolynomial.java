package mullwright.analysis.glass;

import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Centre deflection of a lite on four supported edges by the polynomial of the appendix of ASTM
 * E1300; a cross-check on {@link LargeDeflectionPlate}, not a replacement for it.
 *
 * <p>w = t·exp(r₀ + r₁x + r₂x²), x = ln ln q̂, q̂ = q(ab)²/(E t⁴); r₀ = 0.553 − 3.83s + 1.11s² −
 * 0.0969s³, r₁ = −2.29 + 5.83s − 2.17s² + 0.2067s³, r₂ = 1.485 − 1.908s + 0.815s² − 0.0822s³. a
 * long side [m], b short side [m], t minimum thickness [m], q pressure [Pa], E = 71.7 GPa, s = a/b.
 *
 * <p>Range: 1 ≤ s ≤ 5 and 10 ≤ q̂ ≤ 1000. Against the plate solution it is within 5 % for q̂ ≥ 20
 * and s ≤ 2, within 10 % up to s = 5; at q̂ = 10 within 8 %; below that it is refused, because it
 * strays without bound. Source: ASTM E1300, appendix on approximate deflection.
 */
public final class DeflectionPolynomial {
  private static final double LEAST_LOAD = 10;
  private static final double LARGEST_LOAD = 1000;
  private static final double LARGEST_RATIO = 5;

  private DeflectionPolynomial() {}

  /**
   * A lite and its load; which side is the longer does not matter.
   *
   * @param width one side [m]
   * @param height the other side [m]
   * @param thickness minimum thickness [m]
   * @param pressure uniform pressure [Pa]
   */
  public record Lite(double width, double height, double thickness, double pressure) {}

  /** Centre deflection [m]. */
  public static Outcome<Double> solve(Lite lite) {
    double area = lite.width() * lite.height();
    double square = lite.thickness() * lite.thickness();
    double load =
        Math.abs(lite.pressure())
            * area
            * area
            / (GlassFailurePrediction.YOUNGS_MODULUS * square * square);
    double s = Math.max(lite.width(), lite.height()) / Math.min(lite.width(), lite.height());
    return Guard.range()
        .positive("width", lite.width(), "m")
        .positive("height", lite.height(), "m")
        .positive("thickness", lite.thickness(), "m")
        .that(s <= LARGEST_RATIO, "long side over short side", s, "", "at most 5")
        .that(
            load >= LEAST_LOAD && load <= LARGEST_LOAD,
            "load intensity q(ab)²/(E t⁴)",
            load,
            "",
            "between 10 and 1000")
        .then(() -> lite.thickness() * ratio(s, StrictMath.log(StrictMath.log(load))));
  }

  private static double ratio(double s, double x) {
    double r0 = 0.553 + s * (-3.83 + s * (1.11 - 0.0969 * s));
    double r1 = -2.29 + s * (5.83 + s * (-2.17 + 0.2067 * s));
    double r2 = 1.485 + s * (-1.908 + s * (0.815 - 0.0822 * s));
    return StrictMath.exp(r0 + x * (r1 + x * r2));
  }
}
