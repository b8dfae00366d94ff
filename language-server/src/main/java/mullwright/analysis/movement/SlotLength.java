package mullwright.analysis.movement;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Length of a slot in a sliding anchor: bolt diameter + movement up + movement down + adjustment.
 *
 * <p>Holds for a bolt set at the middle of its travel at the temperature of setting. Overall length
 * of the slot, ends included. Source: common practice.
 */
public final class SlotLength {
  /** Bolt, both movements, adjustment. */
  public static final Formula NEEDED =
      new Formula(
          "bolt diameter + movement up + movement down + installation adjustment",
          "common practice");

  private SlotLength() {}

  /**
   * What the slot must take.
   *
   * @param bolt diameter of the bolt [m], more than 0
   * @param up movement up [m], 0 or more
   * @param down movement down [m], 0 or more
   * @param adjustment adjustment when installing [m], 0 or more
   */
  public record Input(double bolt, double up, double down, double adjustment) {}

  /**
   * The slot.
   *
   * @param input what was put in
   * @param needed least overall length [m]
   */
  public record Result(Input input, double needed) {}

  /** Computes the length. */
  public static Outcome<Result> solve(Input in) {
    return Guard.range()
        .positive("bolt diameter", in.bolt(), "m")
        .notNegative("movement up", in.up(), "m")
        .notNegative("movement down", in.down(), "m")
        .notNegative("installation adjustment", in.adjustment(), "m")
        .then(() -> new Result(in, in.bolt() + in.up() + in.down() + in.adjustment()));
  }
}
