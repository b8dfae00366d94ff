package mullwright.analysis.wind;

import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Wind on components and cladding of walls of buildings up to 60 ft high, by ASCE 7-16, part 1 of
 * chapter 30: p = q_h[(GC_p) − (±GC_pi)].
 *
 * <p>With A the effective wind area in ft², held between 10 and 500: positive, zones 4 and 5:
 * 1.1766 − 0.1766·log₁₀A; negative, zone 4: −(1.2766 − 0.1766·log₁₀A); negative, zone 5: −(1.7532 −
 * 0.3532·log₁₀A); all × 0.9 where the roof slopes 10° or less. GC_pi 0.18 for enclosed, 0.55 for
 * partially enclosed buildings. Source: ASCE 7-16, figure 30.3-1 (ASCE 7-22 alike), from memory,
 * end values re-checked.
 */
public final class LowRiseCladding {
  private static final double FOOT = 0.3048;
  private static final double HIGHEST = 60 * FOOT;
  private static final double LEAST_AREA = 10;
  private static final double LARGEST_AREA = 500;

  private LowRiseCladding() {}

  /**
   * A part of a wall.
   *
   * @param meanRoofHeight h [m]
   * @param velocityPressure q_h with K_d, see {@link VelocityPressure} [Pa]
   * @param effectiveArea effective wind area of the part [m²]
   * @param internalCoefficient GC_pi, as a positive number
   * @param flatRoof whether the roof slopes 10° or less
   */
  public record Part(
      double meanRoofHeight,
      double velocityPressure,
      double effectiveArea,
      double internalCoefficient,
      boolean flatRoof) {}

  /** Pressures on the part. */
  public static Outcome<CladdingPressure> solve(Part part) {
    return Guard.range()
        .that(
            part.meanRoofHeight() > 0 && part.meanRoofHeight() <= HIGHEST,
            "mean roof height",
            part.meanRoofHeight(),
            "m",
            "above 0 and at most 18.288 m (60 ft)")
        .positive("velocity pressure", part.velocityPressure(), "Pa")
        .positive("effective wind area", part.effectiveArea(), "m²")
        .that(
            part.internalCoefficient() >= 0 && part.internalCoefficient() <= 0.55,
            "internal pressure coefficient",
            part.internalCoefficient(),
            "",
            "between 0 and 0.55")
        .then(
            () ->
                CladdingPressure.of(
                    coefficients(part.effectiveArea(), part.flatRoof()),
                    part.velocityPressure(),
                    part.velocityPressure(),
                    part.velocityPressure() * part.internalCoefficient()));
  }

  private static CladdingPressure.Coefficients coefficients(double area, boolean flatRoof) {
    double feet = Math.max(LEAST_AREA, Math.min(LARGEST_AREA, area / (FOOT * FOOT)));
    double log = StrictMath.log10(feet);
    double flat = flatRoof ? 0.9 : 1;
    return new CladdingPressure.Coefficients(
        flat * (1.1766 - 0.1766 * log),
        -flat * (1.2766 - 0.1766 * log),
        -flat * (1.7532 - 0.3532 * log));
  }
}
