package mullwright.analysis.fastener;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Least edge distance, spacing and greatest size of a round hole for a fastener in aluminum.
 *
 * <p>Edge distance ≥ 1.5·D, full bearing from 2·D on; spacing ≥ 2.5·D; hole ≤ D + 1/16 in.
 * Distances are from the hole's centre. D nominal diameter [m]. Slots need washers or plates and
 * are not covered. Source: Aluminum Design Manual, section J.3, from memory.
 */
public final class HoleLayout {
  private static final String SOURCE = "Aluminum Design Manual, section J.3, from memory";
  private static final double SIXTEENTH_INCH = 0.0254 / 16;

  /** 1.5·D. */
  public static final Formula LEAST_EDGE = new Formula("1.5 × fastener diameter", SOURCE);

  /** 2·D. */
  public static final Formula FULL_EDGE = new Formula("2 × fastener diameter", SOURCE);

  /** 2.5·D. */
  public static final Formula LEAST_SPACING = new Formula("2.5 × fastener diameter", SOURCE);

  /** D + 1/16 in. */
  public static final Formula GREATEST_HOLE = new Formula("fastener diameter + 1/16\"", SOURCE);

  private HoleLayout() {}

  /**
   * The limits for one fastener.
   *
   * @param diameter nominal diameter put in [m]
   * @param leastEdge least edge distance [m]
   * @param fullEdge edge distance from which on bearing is full [m]
   * @param leastSpacing least distance between centres [m]
   * @param greatestHole greatest diameter of the hole [m]
   */
  public record Result(
      double diameter,
      double leastEdge,
      double fullEdge,
      double leastSpacing,
      double greatestHole) {}

  /** Computes the limits for a nominal diameter [m]. */
  public static Outcome<Result> solve(double diameter) {
    return Guard.range()
        .positive("fastener diameter", diameter, "m")
        .then(
            () ->
                new Result(
                    diameter,
                    1.5 * diameter,
                    2 * diameter,
                    2.5 * diameter,
                    diameter + SIXTEENTH_INCH));
  }
}
