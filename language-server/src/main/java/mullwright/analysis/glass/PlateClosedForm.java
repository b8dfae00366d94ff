package mullwright.analysis.glass;

import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Stress, small deflection and volume change of a lite on four edges by the closed forms of EN
 * 16612, annex B.
 *
 * <p>a SHORT side [m], b long side [m] (the reverse of ASTM E1300), h thickness [m], λ = a/b, F
 * pressure [Pa], E = 70 GPa, ν = 0.23, p* = (ab/4h²)²·F/E. σ = k₁·(a²/h²)·F, w = k₄·(a⁴/h³)·F/E, ΔV
 * = k₅·ab·(a⁴/h³)·F/E; k₁ = 1/{4λ√[z₂² + p*²/(z₃² + (z₄p*)²)]}, k₄ = z₁/(16λ²) for small loads, k₅
 * = k₄·[0.4198 + 0.22·exp(−6.8·λ^1.33)], with z₁ to z₄ functions of λ.
 *
 * <p>Range: 0.2 ≤ λ ≤ 1, p* ≤ 100. Against plate solutions k₁ errs between −8 and +12 % for λ ≥
 * 0.25. The deflection is the linear one, an upper bound: the standard's nonlinear k₄ is not known
 * for certain here, so use {@link LargeDeflectionPlate} with E = 70 GPa and ν = 0.23 beyond half
 * the thickness. Older drafts scale the same letters differently and must not be mixed in. Source:
 * EN 16612:2019, annex B, from memory; forms re-derived.
 */
public final class PlateClosedForm {
  /** Young's modulus of the EN glass standards [Pa]. */
  public static final double YOUNGS_MODULUS = 70e9;

  /** Poisson's ratio of the EN glass standards. */
  public static final double POISSONS_RATIO = 0.23;

  private static final double LEAST_RATIO = 0.2;
  private static final double LARGEST_LOAD = 100;

  private PlateClosedForm() {}

  /**
   * A lite and its load; which side is the longer does not matter.
   *
   * @param width one side [m]
   * @param height the other side [m]
   * @param thickness thickness [m]
   * @param pressure uniform design pressure [Pa]
   */
  public record Lite(double width, double height, double thickness, double pressure) {}

  /**
   * What the closed forms give.
   *
   * @param loadIntensity p*
   * @param stressCoefficient k₁
   * @param stress largest stress [Pa]
   * @param linearDeflection centre deflection without membrane forces [m]
   * @param volumeCoefficient k₅ of small loads
   * @param volumeChange volume between the lite and its plane without membrane forces [m³]
   */
  public record Response(
      double loadIntensity,
      double stressCoefficient,
      double stress,
      double linearDeflection,
      double volumeCoefficient,
      double volumeChange) {}

  /** Stress, linear deflection and volume change. */
  public static Outcome<Response> solve(Lite lite) {
    double a = Math.min(lite.width(), lite.height());
    double b = Math.max(lite.width(), lite.height());
    double load = Math.abs(lite.pressure());
    double quarter = a * b / (4 * lite.thickness() * lite.thickness());
    double intensity = quarter * quarter * load / YOUNGS_MODULUS;
    return Guard.range()
        .positive("width", lite.width(), "m")
        .positive("height", lite.height(), "m")
        .positive("thickness", lite.thickness(), "m")
        .that(a / b >= LEAST_RATIO, "short side over long side", a / b, "", "at least 0.2")
        .that(intensity <= LARGEST_LOAD, "load intensity p*", intensity, "", "at most 100")
        .then(() -> response(a, b, lite.thickness(), load, intensity));
  }

  private static Response response(double a, double b, double h, double load, double intensity) {
    double ratio = a / b;
    double k1 = stressCoefficient(ratio, intensity);
    double k4 = deflectionCoefficient(ratio);
    double k5 = volumeCoefficient(ratio);
    double height = a * a * a * a / (h * h * h) * load / YOUNGS_MODULUS;
    return new Response(
        intensity, k1, k1 * a * a / (h * h) * load, k4 * height, k5, k5 * a * b * height);
  }

  /** k₁ for λ and p*. */
  static double stressCoefficient(double ratio, double intensity) {
    double slender = 1 / ratio - 1;
    double z2 =
        1
            / (24
                * ratio
                * (0.0447 + 0.0803 * (1 - StrictMath.exp(-1.17 * StrictMath.pow(slender, 1.073)))));
    double z3 = 4.5 * slender * slender + 4.5;
    double z4 = 0.585 - 0.05 * slender;
    double held = z4 * intensity;
    return 1 / (4 * ratio * Math.sqrt(z2 * z2 + intensity * intensity / (z3 * z3 + held * held)));
  }

  /** z₁ for λ. */
  static double z1(double ratio) {
    double slender = 1 / ratio - 1;
    return 192
        * (1 - POISSONS_RATIO * POISSONS_RATIO)
        * ratio
        * ratio
        * (0.00406 + 0.00896 * (1 - StrictMath.exp(-1.123 * StrictMath.pow(slender, 1.097))));
  }

  private static double deflectionCoefficient(double ratio) {
    return z1(ratio) / (16 * ratio * ratio);
  }

  /** k₅ of small loads for λ. */
  static double volumeCoefficient(double ratio) {
    return deflectionCoefficient(ratio)
        * (0.4198 + 0.22 * StrictMath.exp(-6.8 * StrictMath.pow(ratio, 1.33)));
  }
}
