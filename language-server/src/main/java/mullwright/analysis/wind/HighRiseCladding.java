package mullwright.analysis.wind;

import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Wind on components and cladding of walls of buildings higher than 60 ft, by ASCE 7-16, part 3 of
 * chapter 30: p = q(GC_p) − q_h(±GC_pi).
 *
 * <p>Between A = 20 and 500 ft² straight on log A: positive 0.9 to 0.6; negative, zone 4, −0.9 to
 * −0.7; negative, zone 5, −1.8 to −1.0. Pressure towards the wall uses q_z at the part's height,
 * suction and internal pressure use q_h. The alternative for 60 to 90 ft is not here. Source: ASCE
 * 7-16, figure 30.4-1, from memory.
 */
public final class HighRiseCladding {
  private static final double FOOT = 0.3048;
  private static final double LOWEST = 60 * FOOT;
  private static final double LEAST_AREA = 20;
  private static final double LARGEST_AREA = 500;

  private HighRiseCladding() {}

  /**
   * A part of a wall.
   *
   * @param meanRoofHeight h [m]
   * @param roofVelocityPressure q_h with K_d, see {@link VelocityPressure} [Pa]
   * @param partVelocityPressure q_z with K_d at the height of the part [Pa]
   * @param effectiveArea effective wind area of the part [m²]
   * @param internalCoefficient GC_pi, as a positive number
   */
  public record Part(
      double meanRoofHeight,
      double roofVelocityPressure,
      double partVelocityPressure,
      double effectiveArea,
      double internalCoefficient) {}

  /** Pressures on the part. */
  public static Outcome<CladdingPressure> solve(Part part) {
    return Guard.range()
        .that(
            part.meanRoofHeight() > LOWEST && Double.isFinite(part.meanRoofHeight()),
            "mean roof height",
            part.meanRoofHeight(),
            "m",
            "more than 18.288 m (60 ft)")
        .positive("velocity pressure at the roof", part.roofVelocityPressure(), "Pa")
        .positive("velocity pressure at the part", part.partVelocityPressure(), "Pa")
        .that(
            part.partVelocityPressure() <= part.roofVelocityPressure(),
            "velocity pressure at the part",
            part.partVelocityPressure(),
            "Pa",
            "at most that at the roof")
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
                    coefficients(part.effectiveArea()),
                    part.partVelocityPressure(),
                    part.roofVelocityPressure(),
                    part.roofVelocityPressure() * part.internalCoefficient()));
  }

  private static CladdingPressure.Coefficients coefficients(double area) {
    double feet = Math.max(LEAST_AREA, Math.min(LARGEST_AREA, area / (FOOT * FOOT)));
    double way = StrictMath.log10(feet / LEAST_AREA) / StrictMath.log10(LARGEST_AREA / LEAST_AREA);
    return new CladdingPressure.Coefficients(
        0.9 + way * (0.6 - 0.9), -0.9 + way * (0.9 - 0.7), -1.8 + way * (1.8 - 1.0));
  }
}
