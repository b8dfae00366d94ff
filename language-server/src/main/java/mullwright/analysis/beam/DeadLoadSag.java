package mullwright.analysis.beam;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Sag of a horizontal in the plane of the wall under a lite on two setting blocks and its own
 * weight.
 *
 * <p>Δ = P·a·(3·L² − 4·a²)/(24·E·I) + 5·w·L⁴/(384·E·I), at midspan.
 *
 * <p>Symbols: P half the weight of the glass [N]; a distance of each block from the near end [m]; L
 * span [m]; w own weight on length [N/m]; E·I rigidity about the axis that vertical load bends
 * [N·m²]. The glass stands off the shear centre by e, which twists the horizontal by W·e in all;
 * what that does is left to the engineer. Range: simple span, two equal blocks placed alike, a up
 * to L/2. Source: closed form.
 */
public final class DeadLoadSag {
  /** Sag under the glass. */
  public static final Formula GLASS =
      new Formula(
          "half glass weight × block distance × (3 × span² − 4 × block distance²)"
              + " ÷ (24 × rigidity)",
          "closed form");

  /** Sag under its own weight. */
  public static final Formula OWN_WEIGHT =
      new Formula("5 × own weight × span⁴ ÷ (384 × rigidity)", "closed form");

  private DeadLoadSag() {}

  /**
   * A horizontal and what it carries.
   *
   * @param span span [m], more than 0
   * @param rigidity E·I about the axis that vertical load bends [N·m²], more than 0
   * @param glassWeight weight of the lite [N], 0 or more
   * @param blockDistance distance of each setting block's centre from the near end [m], 0 to half
   *     the span
   * @param ownWeight weight of the horizontal and what is fixed along it [N/m], 0 or more
   * @param eccentricity distance of the glass from the shear centre [m], 0 or more
   */
  public record Input(
      double span,
      double rigidity,
      double glassWeight,
      double blockDistance,
      double ownWeight,
      double eccentricity) {}

  /**
   * The sag.
   *
   * @param input what was put in
   * @param byGlass sag under the glass, at midspan [m]
   * @param byOwnWeight sag under its own weight, at midspan [m]
   * @param moment greatest bending moment [N·m]
   * @param endReaction force on each end [N]
   * @param torque twisting moment of the glass on the whole span [N·m]
   */
  public record Result(
      Input input,
      double byGlass,
      double byOwnWeight,
      double moment,
      double endReaction,
      double torque) {

    /** Whole sag at midspan [m]. */
    public double sag() {
      return byGlass + byOwnWeight;
    }
  }

  /** Computes the sag. */
  public static Outcome<Result> solve(Input in) {
    return Guard.range()
        .positive("span", in.span(), "m")
        .positive("flexural rigidity", in.rigidity(), "N·m²")
        .notNegative("glass weight", in.glassWeight(), "N")
        .that(
            in.blockDistance() >= 0 && in.blockDistance() <= in.span() / 2,
            "distance of a setting block from the end",
            in.blockDistance(),
            "m",
            "from 0 to half the span")
        .notNegative("own weight", in.ownWeight(), "N/m")
        .notNegative("eccentricity of the glass", in.eccentricity(), "m")
        .then(() -> compute(in));
  }

  private static Result compute(Input in) {
    double span = in.span();
    double block = in.glassWeight() / 2;
    double a = in.blockDistance();
    return new Result(
        in,
        block * a * (3 * span * span - 4 * a * a) / (24 * in.rigidity()),
        5 * in.ownWeight() * Math.pow(span, 4) / (384 * in.rigidity()),
        block * a + in.ownWeight() * span * span / 8,
        block + in.ownWeight() * span / 2,
        in.glassWeight() * in.eccentricity());
  }
}
