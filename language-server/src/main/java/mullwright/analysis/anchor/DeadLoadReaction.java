package mullwright.analysis.anchor;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Weight on the one dead-load anchor of a length: V = γ·b·L + brought-in weights.
 *
 * <p>Symbols: γ weight of the wall on its area [Pa] (glazed walls weigh some 380 to 480 Pa, 8 to 10
 * psf; compute it from the parts where they are known); b tributary width [m]; L length that hangs
 * from the anchor [m]. Source: statics.
 */
public final class DeadLoadReaction {
  /** V = γ·b·L + what is brought in. */
  public static final Formula WEIGHT =
      new Formula("weight of the wall × tributary width × length + other weight", "closed form");

  private DeadLoadReaction() {}

  /**
   * What hangs from the anchor.
   *
   * @param weightOfWall weight on the wall's area [Pa], 0 or more
   * @param tributaryWidth half the bay on either side [m], more than 0
   * @param length continuous length [m], more than 0
   * @param otherWeight covers, brackets and the like [N], 0 or more
   */
  public record Input(
      double weightOfWall, double tributaryWidth, double length, double otherWeight) {}

  /**
   * The reaction.
   *
   * @param input what was put in
   * @param weight vertical reaction, up [N]
   */
  public record Result(Input input, double weight) {}

  /** Computes the reaction. */
  public static Outcome<Result> solve(Input in) {
    return Guard.range()
        .notNegative("weight of the wall", in.weightOfWall(), "Pa")
        .positive("tributary width", in.tributaryWidth(), "m")
        .positive("length", in.length(), "m")
        .notNegative("other weight", in.otherWeight(), "N")
        .then(
            () ->
                new Result(
                    in, in.weightOfWall() * in.tributaryWidth() * in.length() + in.otherWeight()));
  }
}
