package mullwright.analysis.glass;

import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Factor on the 3 s load resistance of annealed glass for another load duration, chance of breakage
 * unchanged: (3/t)^(1/16), t the duration [s].
 *
 * <p>Range: 3 s to a year. Annealed glass only: heat-treated glass tires less, and how much less
 * this method does not say. Source: static fatigue of the glass failure prediction model of ASTM
 * E1300; the standard tabulates the same figures to two digits.
 */
public final class LoadDurationFactor {
  private static final double REFERENCE = 3;
  private static final double FATIGUE = 16;
  private static final double YEAR = 366 * 86400.0;

  private LoadDurationFactor() {}

  /**
   * How long a load acts.
   *
   * @param duration duration [s]
   */
  public record Load(double duration) {}

  /** The factor, 1 at 3 s. */
  public static Outcome<Double> solve(Load load) {
    return Guard.range()
        .that(
            load.duration() >= REFERENCE && load.duration() <= YEAR,
            "load duration",
            load.duration(),
            "s",
            "between 3 s and a year")
        .then(() -> StrictMath.pow(REFERENCE / load.duration(), 1 / FATIGUE));
  }
}
