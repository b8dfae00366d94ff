package mullwright.analysis.wind;

import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Peak velocity pressure at a height by EN 1991-1-4: q_p = (1 + 7I_v)·½ρ(c_r·c_o·v_b)².
 *
 * <p>v_b = c_dir·c_season·v_b,0 [m/s]; k_r = 0.19(z₀/0.05)^0.07; c_r = k_r·ln(z/z₀) and I_v =
 * 1/(c_o·ln(z/z₀)) at no less than z_min; ρ air density [kg/m³], 1.25 recommended; c_o orography
 * factor, 1 on flat ground. Range: z up to 200 m. National annexes change much of this. Source: EN
 * 1991-1-4:2005, section 4, recommended values, from memory.
 */
public final class PeakVelocityPressure {
  private static final double HIGHEST = 200;
  private static final double FASTEST = 60;
  private static final double REFERENCE_ROUGHNESS = 0.05;

  private PeakVelocityPressure() {}

  /**
   * Wind at a height.
   *
   * @param terrain terrain category
   * @param height height above ground z [m]
   * @param basicSpeed v_b, direction and season included [m/s]
   * @param orography c_o
   * @param airDensity ρ [kg/m³]
   */
  public record Site(
      TerrainCategory terrain,
      double height,
      double basicSpeed,
      double orography,
      double airDensity) {}

  /**
   * The pressure and what it is made of.
   *
   * @param terrainFactor k_r
   * @param roughnessFactor c_r
   * @param turbulence I_v
   * @param exposureFactor c_e = q_p over ½ρv_b²
   * @param pressure q_p [Pa]
   */
  public record Pressure(
      double terrainFactor,
      double roughnessFactor,
      double turbulence,
      double exposureFactor,
      double pressure) {}

  /** Peak velocity pressure at the height. */
  public static Outcome<Pressure> solve(Site site) {
    return Guard.range()
        .that(
            site.height() >= 0 && site.height() <= HIGHEST,
            "height above ground",
            site.height(),
            "m",
            "between 0 and 200 m")
        .that(
            site.basicSpeed() > 0 && site.basicSpeed() <= FASTEST,
            "basic wind velocity",
            site.basicSpeed(),
            "m/s",
            "between 0 and 60 m/s")
        .that(
            site.orography() >= 1 && site.orography() <= 2,
            "orography factor",
            site.orography(),
            "",
            "between 1 and 2")
        .that(
            site.airDensity() >= 0.8 && site.airDensity() <= 1.5,
            "air density",
            site.airDensity(),
            "kg/m³",
            "between 0.8 and 1.5 kg/m³")
        .then(() -> pressure(site));
  }

  private static Pressure pressure(Site site) {
    double roughness = site.terrain().roughness();
    double height = Math.max(site.height(), site.terrain().leastHeight());
    double log = StrictMath.log(height / roughness);
    double terrainFactor = 0.19 * StrictMath.pow(roughness / REFERENCE_ROUGHNESS, 0.07);
    double roughnessFactor = terrainFactor * log;
    double turbulence = 1 / (site.orography() * log);
    double mean = roughnessFactor * site.orography();
    double exposure = (1 + 7 * turbulence) * mean * mean;
    double basic = 0.5 * site.airDensity() * site.basicSpeed() * site.basicSpeed();
    return new Pressure(terrainFactor, roughnessFactor, turbulence, exposure, exposure * basic);
  }
}
