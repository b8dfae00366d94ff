package mullwright.analysis.movement;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Lap of a splice sleeve in the length that slides on it, when the gap is at its widest.
 *
 * <p>The sleeve is fixed in one length and reaches through the gap into the other: lap = sleeve −
 * fixed end − gap. It must stay at or above the least lap at the greatest gap. Source: geometry;
 * the least lap is common practice or the system's own.
 */
public final class SleeveEngagement {
  /** Sleeve less its fixed end and the widest gap. */
  public static final Formula LEAST_LAP =
      new Formula("sleeve length − fixed end − greatest gap", "closed form");

  /** Fixed end, widest gap and least lap. */
  public static final Formula NEEDED =
      new Formula("fixed end + greatest gap + least lap", "common practice");

  private SleeveEngagement() {}

  /**
   * A sleeve in a splice.
   *
   * @param sleeve length of the sleeve [m], more than 0
   * @param fixedEnd length of it inside the piece it is fixed to [m], 0 or more
   * @param gap gap when set [m], 0 or more
   * @param greatestGap gap at its widest [m], at least {@code gap}; see {@link SpliceRange}
   * @param leastLap lap that must be left [m], 0 or more
   */
  public record Input(
      double sleeve, double fixedEnd, double gap, double greatestGap, double leastLap) {}

  /**
   * The laps; negative where the sleeve has left the piece.
   *
   * @param input what was put in
   * @param lapWhenSet lap when set [m]
   * @param lapAtWidest lap at the widest gap [m]
   * @param neededSleeve least length of the sleeve [m]
   */
  public record Result(Input input, double lapWhenSet, double lapAtWidest, double neededSleeve) {

    /** Whether enough lap is left at the widest gap. */
    public boolean holds() {
      return lapAtWidest >= input.leastLap();
    }
  }

  /** Computes the laps. */
  public static Outcome<Result> solve(Input in) {
    return Guard.range()
        .positive("sleeve length", in.sleeve(), "m")
        .notNegative("fixed end of the sleeve", in.fixedEnd(), "m")
        .notNegative("gap when set", in.gap(), "m")
        .finite("greatest gap", in.greatestGap(), "m")
        .that(
            in.greatestGap() >= in.gap(),
            "greatest gap",
            in.greatestGap(),
            "m",
            "at least the gap when set")
        .notNegative("least lap", in.leastLap(), "m")
        .then(
            () ->
                new Result(
                    in,
                    in.sleeve() - in.fixedEnd() - in.gap(),
                    in.sleeve() - in.fixedEnd() - in.greatestGap(),
                    in.fixedEnd() + in.greatestGap() + in.leastLap()));
  }
}
