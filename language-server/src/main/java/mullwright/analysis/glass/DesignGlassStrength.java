package mullwright.analysis.glass;

import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Design value of the bending strength of glass by EN 16612.
 *
 * <p>f_gd = k_e·k_mod·k_sp·f_gk/γ_A + k_v·(f_bk − f_gk)/γ_v; f_gk = 45 MPa; γ_A = 1.8, γ_v = 1.2;
 * f_bk = 45, 70, 120 MPa for annealed, heat-strengthened and thermally toughened float glass; k_mod
 * = 0.663·t^(−1/16) ≤ 1, t the load duration in hours; k_e edge factor (1 where the edge is not in
 * tension); k_sp surface profile factor (1 for float as made); k_v strengthening factor (1 for
 * horizontal toughening).
 *
 * <p>Range: durations 3 s to 50 years; factors above 0 and at most 1. Nations choose other partial
 * factors, so a national annex governs. Source: EN 16612:2019, from memory.
 */
public final class DesignGlassStrength {
  private static final double FLOAT_STRENGTH = 45e6;
  private static final double[] CHARACTERISTIC = {45e6, 70e6, 120e6};
  private static final double MATERIAL = 1.8;
  private static final double PRESTRESS = 1.2;
  private static final double SHORTEST = 3;
  private static final double LONGEST = 50 * 366 * 86400.0;
  private static final double HOUR = 3600;

  private DesignGlassStrength() {}

  /**
   * Glass and its load.
   *
   * @param treatment heat treatment
   * @param duration load duration [s]
   * @param edgeFactor k_e
   * @param surfaceFactor k_sp
   * @param strengtheningFactor k_v; without effect on annealed glass
   */
  public record Glass(
      HeatTreatment treatment,
      double duration,
      double edgeFactor,
      double surfaceFactor,
      double strengtheningFactor) {}

  /**
   * Strength and the factor that carries the duration.
   *
   * @param durationFactor k_mod
   * @param strength f_gd [Pa]
   */
  public record Strength(double durationFactor, double strength) {}

  /** Design strength. */
  public static Outcome<Strength> solve(Glass glass) {
    Guard guard =
        Guard.range()
            .that(
                glass.duration() >= SHORTEST && glass.duration() <= LONGEST,
                "load duration",
                glass.duration(),
                "s",
                "between 3 s and 50 years");
    factor(guard, "edge factor", glass.edgeFactor());
    factor(guard, "surface profile factor", glass.surfaceFactor());
    factor(guard, "strengthening factor", glass.strengtheningFactor());
    return guard.then(() -> strength(glass));
  }

  private static void factor(Guard guard, String name, double value) {
    guard.that(value > 0 && value <= 1, name, value, "", "greater than 0 and at most 1");
  }

  private static Strength strength(Glass glass) {
    double duration = Math.min(1, 0.663 * StrictMath.pow(glass.duration() / HOUR, -1.0 / 16));
    double asMade = glass.edgeFactor() * duration * glass.surfaceFactor() * FLOAT_STRENGTH;
    double gained = CHARACTERISTIC[glass.treatment().ordinal()] - FLOAT_STRENGTH;
    return new Strength(
        duration, asMade / MATERIAL + glass.strengtheningFactor() * gained / PRESTRESS);
  }
}
