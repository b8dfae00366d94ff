package mullwright.analysis.movement;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Stress in a piece that is held fast at two places while its temperature changes: σ = E·α·ΔT.
 *
 * <p>Shows what a second dead-load support on one continuous length does. Symbols: E modulus of
 * elasticity [Pa]; α coefficient of linear expansion [1/K]; ΔT change of temperature [K]. Range:
 * elastic, ends that do not give (an upper bound); length does not matter. Source: textbook.
 */
public final class RestrainedExpansion {
  /** σ = E·α·ΔT. */
  public static final Formula STRESS =
      new Formula(
          "modulus of elasticity × coefficient of expansion × temperature change", "closed form");

  private RestrainedExpansion() {}

  /**
   * A held piece.
   *
   * @param modulus modulus of elasticity [Pa], more than 0
   * @param expansion coefficient of linear expansion [1/K], 0 or more
   * @param temperatureChange change of temperature [K]; negative when it cools
   */
  public record Input(double modulus, double expansion, double temperatureChange) {}

  /**
   * The stress.
   *
   * @param input what was put in
   * @param stress stress [Pa], compression positive when it warms
   */
  public record Result(Input input, double stress) {}

  /** Computes the stress. */
  public static Outcome<Result> solve(Input in) {
    return Guard.range()
        .positive("modulus of elasticity", in.modulus(), "Pa")
        .notNegative("coefficient of expansion", in.expansion(), "1/K")
        .finite("temperature change", in.temperatureChange(), "K")
        .then(() -> new Result(in, in.modulus() * in.expansion() * in.temperatureChange()));
  }
}
