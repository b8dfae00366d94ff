package mullwright.analysis.anchor;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Pull and push that an eccentric weight makes in an anchor: T = V·e/d.
 *
 * <p>Symbols: V weight [N]; e distance of its line from the fastener line [m]; d arm of the couple,
 * fastener to heel of the anchor [m]. Range: rigid anchor, one row of fasteners in tension; prying
 * beyond this couple is the engineer's. Source: statics.
 */
public final class AnchorCouple {
  /** M = V·e. */
  public static final Formula MOMENT = new Formula("weight × eccentricity", "closed form");

  /** T = V·e/d. */
  public static final Formula PULL =
      new Formula("weight × eccentricity ÷ arm of the couple", "closed form");

  private AnchorCouple() {}

  /**
   * A weight off the fastener line.
   *
   * @param weight weight [N]
   * @param eccentricity distance out from the fastener line [m], 0 or more
   * @param arm arm of the couple [m], more than 0
   */
  public record Input(double weight, double eccentricity, double arm) {}

  /**
   * The couple.
   *
   * @param input what was put in
   * @param moment moment about the fastener line [N·m]
   * @param pull tension in the fasteners, all together [N]
   */
  public record Result(Input input, double moment, double pull) {}

  /** Computes moment and pull. */
  public static Outcome<Result> solve(Input in) {
    return Guard.range()
        .finite("weight", in.weight(), "N")
        .notNegative("eccentricity", in.eccentricity(), "m")
        .positive("arm of the couple", in.arm(), "m")
        .then(
            () -> {
              double moment = in.weight() * in.eccentricity();
              return new Result(in, moment, moment / in.arm());
            });
  }
}
