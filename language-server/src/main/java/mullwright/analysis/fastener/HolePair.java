package mullwright.analysis.fastener;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * How far two clearance holes on one fastener may be off: (d_hole − D)/2 each way and part.
 *
 * <p>Symbols: d diameter of each hole, D of the fastener [m]. Source: geometry.
 */
public final class HolePair {
  /** Play of both holes. */
  public static final Formula PLAY =
      new Formula(
          "(first hole − fastener diameter) ÷ 2 + (second hole − fastener diameter) ÷ 2",
          "closed form");

  private HolePair() {}

  /**
   * Two holes and what goes through them.
   *
   * @param first diameter of one hole [m], at least the fastener's
   * @param second diameter of the other [m], at least the fastener's
   * @param fastener diameter of the fastener [m], more than 0
   * @param offset how far the centres are apart as drawn [m], 0 or more
   */
  public record Input(double first, double second, double fastener, double offset) {}

  /**
   * The play.
   *
   * @param input what was put in
   * @param play how far the centres may be apart [m]
   * @param left play left when they are off as drawn [m]; negative when the fastener does not pass
   */
  public record Result(Input input, double play, double left) {

    /** Whether the fastener passes both holes. */
    public boolean passes() {
      return left >= 0;
    }
  }

  /** Computes the play. */
  public static Outcome<Result> solve(Input in) {
    Guard guard = Guard.range().positive("fastener diameter", in.fastener(), "m");
    for (double hole : new double[] {in.first(), in.second()}) {
      guard.that(
          hole >= in.fastener() && hole < Double.POSITIVE_INFINITY,
          "hole diameter",
          hole,
          "m",
          "at least that of the fastener");
    }
    return guard
        .notNegative("offset of the holes", in.offset(), "m")
        .then(
            () -> {
              double play = (in.first() - in.fastener()) / 2 + (in.second() - in.fastener()) / 2;
              return new Result(in, play, play - in.offset());
            });
  }
}
