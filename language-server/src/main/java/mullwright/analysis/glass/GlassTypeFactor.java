package mullwright.analysis.glass;

import mullwright.analysis.Outcome;
import mullwright.analysis.Refusal;

/**
 * Glass type factor of ASTM E1300: how much more than an annealed lite under a 3 s load a lite
 * bears, for its heat treatment, its place in a double unit and the duration of the load.
 *
 * <p>Durations are 3 s (wind) and 30 days (snow, altitude); for others see {@link
 * LoadDurationFactor}. Units of unlike lites under a 30 day load are refused: their factors in the
 * standard are not certain to this project. Source: ASTM E1300, tables 1 to 3, from memory.
 */
public final class GlassTypeFactor {
  /** Duration of the short factors [s]. */
  public static final double SHORT = 3;

  /** Duration of the long factors, 30 days [s]. */
  public static final double LONG = 30 * 86400.0;

  private static final double[] SINGLE_SHORT = {1.0, 2.0, 4.0};
  private static final double[] SINGLE_LONG = {0.43, 1.3, 3.0};
  private static final double[][] DOUBLE_SHORT = {
    {0.90, 1.0, 1.0},
    {1.9, 1.8, 1.9},
    {3.8, 3.8, 3.6}
  };
  private static final double[] DOUBLE_LONG_ALIKE = {0.39, 1.25, 2.85};

  private GlassTypeFactor() {}

  /**
   * A lite by itself.
   *
   * @param treatment its heat treatment
   * @param duration {@link #SHORT} or {@link #LONG} [s]
   */
  public record Single(HeatTreatment treatment, double duration) {}

  /**
   * One lite of a sealed double unit.
   *
   * @param treatment heat treatment of the lite looked at
   * @param other heat treatment of the other lite
   * @param duration {@link #SHORT} or {@link #LONG} [s]
   */
  public record InDoubleUnit(HeatTreatment treatment, HeatTreatment other, double duration) {}

  /** Factor of a single lite. */
  public static Outcome<Double> solve(Single lite) {
    if (lite.duration() == SHORT) {
      return new Outcome.Solved<>(SINGLE_SHORT[lite.treatment().ordinal()]);
    }
    if (lite.duration() == LONG) {
      return new Outcome.Solved<>(SINGLE_LONG[lite.treatment().ordinal()]);
    }
    return new Outcome.Refused<>(
        new Refusal("load duration", lite.duration(), "s", "3 s or 30 days (2592000 s)"));
  }

  /** Factor of one lite of a double unit. */
  public static Outcome<Double> solve(InDoubleUnit lite) {
    int own = lite.treatment().ordinal();
    if (lite.duration() == SHORT) {
      return new Outcome.Solved<>(DOUBLE_SHORT[own][lite.other().ordinal()]);
    }
    if (lite.duration() == LONG && lite.treatment() == lite.other()) {
      return new Outcome.Solved<>(DOUBLE_LONG_ALIKE[own]);
    }
    String accepted =
        lite.treatment() == lite.other()
            ? "3 s or 30 days (2592000 s)"
            : "3 s where the two lites are treated differently";
    return new Outcome.Refused<>(new Refusal("load duration", lite.duration(), "s", accepted));
  }
}
