package mullwright.analysis.wind;

import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Ground elevation factor of ASCE 7 for the thinner air higher up: K_e = e^(−0.0000362·z_e), z_e
 * ground elevation above sea level in feet. Taking 1 is always permitted above sea level.
 *
 * <p>Range: −100 m to 5000 m. Source: ASCE 7-16, table 26.9-1, note, from memory.
 */
public final class GroundElevation {
  private static final double PER_METRE = 0.0000362 / 0.3048;

  private GroundElevation() {}

  /**
   * A building site.
   *
   * @param elevation ground above sea level [m]
   */
  public record Site(double elevation) {}

  /** K_e. */
  public static Outcome<Double> solve(Site site) {
    return Guard.range()
        .that(
            site.elevation() >= -100 && site.elevation() <= 5000,
            "ground elevation",
            site.elevation(),
            "m",
            "between -100 m and 5000 m")
        .then(() -> StrictMath.exp(-PER_METRE * site.elevation()));
  }
}
