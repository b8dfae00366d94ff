package mullwright.analysis.movement;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Change of length of a free piece with temperature: ΔL = α·L·ΔT.
 *
 * <p>Symbols: α coefficient of linear expansion [1/K]; L length [m]; ΔT change of the metal's own
 * temperature [K], which in sun is far from that of the air. Range: any, linear expansion. Source:
 * textbook.
 */
public final class ThermalMovement {
  /** ΔL = α·L·ΔT. */
  public static final Formula CHANGE =
      new Formula("coefficient of expansion × length × temperature change", "closed form");

  private ThermalMovement() {}

  /**
   * A free piece and its change of temperature.
   *
   * @param expansion coefficient of linear expansion [1/K], 0 or more
   * @param length length [m], 0 or more
   * @param temperatureChange change of temperature [K]; negative when it cools
   */
  public record Input(double expansion, double length, double temperatureChange) {}

  /**
   * How much longer it gets.
   *
   * @param input what was put in
   * @param change change of length [m]; negative when it shortens
   */
  public record Result(Input input, double change) {}

  /** Computes the change of length. */
  public static Outcome<Result> solve(Input in) {
    return Guard.range()
        .notNegative("coefficient of expansion", in.expansion(), "1/K")
        .notNegative("length", in.length(), "m")
        .finite("temperature change", in.temperatureChange(), "K")
        .then(() -> new Result(in, in.expansion() * in.length() * in.temperatureChange()));
  }
}
