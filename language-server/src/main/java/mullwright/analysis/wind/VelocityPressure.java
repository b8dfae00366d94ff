package mullwright.analysis.wind;

import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Velocity pressure at a height by ASCE 7: q = 0.00256·K_z·K_zt·K_d·K_e·V² (psf, mph), computed in
 * SI with the same constant.
 *
 * <p>K_z by the power law of {@link WindEdition}, at no less than 15 ft; V basic wind speed, 3 s
 * gust [m/s]; K_zt topographic, K_d directionality (0.85 for buildings), K_e ground elevation
 * factor. ASCE 7-22 moves K_d from q to the pressure; here the result carries it in both editions,
 * so that what follows is the same. Range: up to the gradient height; V up to 120 m/s. Source: ASCE
 * 7-16 and 7-22, section 26.10, from memory, end values re-checked.
 */
public final class VelocityPressure {
  private static final double FOOT = 0.3048;
  private static final double LEAST_HEIGHT = 15 * FOOT;
  private static final double FASTEST = 120;

  /** 0.00256 psf/mph² in Pa/(m/s)². */
  private static final double DENSITY =
      0.00256 * (4.4482216152605 / (FOOT * FOOT)) / (0.44704 * 0.44704);

  private VelocityPressure() {}

  /**
   * Wind at a height.
   *
   * @param edition edition of ASCE 7
   * @param exposure terrain
   * @param height height above ground z [m]
   * @param speed basic wind speed V [m/s]
   * @param topographic K_zt, 1 on flat ground
   * @param directionality K_d
   * @param elevation K_e, 1 at sea level or to stay on the safe side
   * @param leastCoefficient floor under K_z, 0 where none; some tables hold 0.70 for exposure B
   */
  public record Site(
      WindEdition edition,
      Exposure exposure,
      double height,
      double speed,
      double topographic,
      double directionality,
      double elevation,
      double leastCoefficient) {}

  /**
   * The pressure and the coefficient in it.
   *
   * @param exposureCoefficient K_z
   * @param pressure velocity pressure times K_d [Pa]
   */
  public record Pressure(double exposureCoefficient, double pressure) {}

  /** Velocity pressure at the height. */
  public static Outcome<Pressure> solve(Site site) {
    double gradient = site.edition().gradientHeight(site.exposure());
    return Guard.range()
        .that(
            site.height() >= 0 && site.height() <= gradient,
            "height above ground",
            site.height(),
            "m",
            "between 0 and the gradient height of the exposure, " + (long) gradient + " m")
        .that(
            site.speed() > 0 && site.speed() <= FASTEST,
            "basic wind speed",
            site.speed(),
            "m/s",
            "between 0 and 120 m/s")
        .that(
            site.topographic() >= 1 && site.topographic() <= 4,
            "topographic factor",
            site.topographic(),
            "",
            "between 1 and 4")
        .that(
            site.directionality() >= 0.8 && site.directionality() <= 1,
            "directionality factor",
            site.directionality(),
            "",
            "between 0.80 and 1")
        .that(
            site.elevation() >= 0.5 && site.elevation() <= 1.05,
            "ground elevation factor",
            site.elevation(),
            "",
            "between 0.5 and 1.05")
        .that(
            site.leastCoefficient() >= 0 && site.leastCoefficient() <= 1,
            "least exposure coefficient",
            site.leastCoefficient(),
            "",
            "between 0 and 1")
        .then(() -> pressure(site, gradient));
  }

  private static Pressure pressure(Site site, double gradient) {
    double relative = Math.max(site.height(), LEAST_HEIGHT) / gradient;
    double profile =
        site.edition().factor()
            * StrictMath.pow(relative, 2 / site.edition().exponent(site.exposure()));
    double coefficient = Math.max(profile, site.leastCoefficient());
    return new Pressure(
        coefficient,
        DENSITY
            * coefficient
            * site.topographic()
            * site.directionality()
            * site.elevation()
            * site.speed()
            * site.speed());
  }
}
