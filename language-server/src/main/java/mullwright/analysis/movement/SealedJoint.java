package mullwright.analysis.movement;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Width of a joint whose sealant must take the movement: W ≥ X/M + T.
 *
 * <p>Symbols: X one-way movement [m], the worse direction; M movement class of the sealant as a
 * share of the joint width (0.25, 0.50) in that direction; T construction tolerance [m]. Where
 * extension and compression classes differ each direction is held by its own. Range: butt joint,
 * movement square to it. Source: ASTM C1472 and ASTM C920, from memory.
 */
public final class SealedJoint {
  /** W = X/M + T. */
  public static final Formula WIDTH =
      new Formula(
          "movement ÷ movement class of the sealant + tolerance", "ASTM C1472, from memory");

  private SealedJoint() {}

  /**
   * A joint and its sealant.
   *
   * @param closing movement that narrows it [m], 0 or more
   * @param opening movement that widens it [m], 0 or more
   * @param compressionClass share of the width it may be narrowed by, more than 0, at most 1
   * @param extensionClass share of the width it may be widened by, more than 0, at most 1
   * @param tolerance construction tolerance [m], 0 or more
   */
  public record Input(
      double closing,
      double opening,
      double compressionClass,
      double extensionClass,
      double tolerance) {}

  /**
   * The width.
   *
   * @param input what was put in
   * @param forClosing width that closing asks for [m]
   * @param forOpening width that opening asks for [m]
   */
  public record Result(Input input, double forClosing, double forOpening) {

    /** Least width of the joint [m]. */
    public double needed() {
      return Math.max(forClosing, forOpening);
    }
  }

  /** Computes the width. */
  public static Outcome<Result> solve(Input in) {
    Guard guard =
        Guard.range()
            .notNegative("closing movement", in.closing(), "m")
            .notNegative("opening movement", in.opening(), "m")
            .notNegative("tolerance", in.tolerance(), "m");
    movementClass(guard, "compression class of the sealant", in.compressionClass());
    movementClass(guard, "extension class of the sealant", in.extensionClass());
    return guard.then(
        () ->
            new Result(
                in,
                in.closing() / in.compressionClass() + in.tolerance(),
                in.opening() / in.extensionClass() + in.tolerance()));
  }

  private static void movementClass(Guard guard, String name, double share) {
    guard.that(share > 0 && share <= 1, name, share, "", "more than 0 and at most 1");
  }
}
