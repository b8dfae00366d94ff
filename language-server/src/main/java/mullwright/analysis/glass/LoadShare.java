package mullwright.analysis.glass;

import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Load share factors of a sealed double unit of monolithic lites under a short load: the factor by
 * which the unit bears more than the lite alone.
 *
 * <p>Both lites deflect alike, so each takes the share tᵢ³/(t₁³+t₂³); the factor is its inverse. t
 * minimum thicknesses [m]. The sealed cavity is taken as rigid, which is on the safe side for the
 * lite away from the load and unsafe for small stiff units: see {@link InsulatingUnitSharing}.
 *
 * <p>Range: thickness ratio up to 4; laminated lites and long loads have tables of their own, which
 * are not here. Source: ASTM E1300 load share factors, equal deflection.
 */
public final class LoadShare {
  private static final double LARGEST_RATIO = 4;

  private LoadShare() {}

  /**
   * A double unit.
   *
   * @param first minimum thickness of one lite [m]
   * @param second minimum thickness of the other [m]
   */
  public record Unit(double first, double second) {}

  /**
   * Factors of the two lites.
   *
   * @param first unit load over load of the first lite
   * @param second unit load over load of the second lite
   */
  public record Factors(double first, double second) {}

  /** Load share factors of the two lites. */
  public static Outcome<Factors> solve(Unit unit) {
    double ratio = Math.max(unit.first(), unit.second()) / Math.min(unit.first(), unit.second());
    return Guard.range()
        .positive("thickness of the first lite", unit.first(), "m")
        .positive("thickness of the second lite", unit.second(), "m")
        .that(ratio <= LARGEST_RATIO, "ratio of the two thicknesses", ratio, "", "at most 4")
        .then(
            () -> {
              double first = unit.first() * unit.first() * unit.first();
              double second = unit.second() * unit.second() * unit.second();
              return new Factors((first + second) / first, (first + second) / second);
            });
  }
}
