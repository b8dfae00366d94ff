package mullwright.analysis.glass;

import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Effective thicknesses of a two-ply laminated lite by the shear transfer coefficient method of
 * ASTM E1300 (appendix on laminated glass effective thickness): the monolithic lite that deflects,
 * or is stressed, alike.
 *
 * <p>h_s = (h₁+h₂)/2 + h_v; h_s1 = h_s·h₁/(h₁+h₂), h_s2 likewise; I_s = h₁h_s2² + h₂h_s1²; Γ = 1/(1
 * + 9.6·E·I_s·h_v/(G·h_s²·a²)); h_ef,w = ∛(h₁³+h₂³+12ΓI_s); h_1,ef,σ = √(h_ef,w³/(h₁+2Γh_s2)), and
 * with indices exchanged for ply 2. h₁, h₂ minimum ply thicknesses [m]; h_v interlayer thickness
 * [m]; a the short side [m]; E = 71.7 GPa; G shear modulus of the interlayer at the load's duration
 * and temperature [Pa]; Γ from 0 (plies slip freely) to 1 (one piece).
 *
 * <p>Range: two plies, thickness ratio up to 2, interlayer no thicker than the thicker ply,
 * supported edges. The method rests on a uniformly loaded beam of span a; for a plate on four edges
 * it is what the standard publishes, not an exact result. G has no default: it is the interlayer
 * maker's, for the duration and temperature of the load. Three plies are refused by having no place
 * here.
 */
public final class LaminatedThickness {
  private static final double LARGEST_RATIO = 2;

  private LaminatedThickness() {}

  /**
   * A two-ply laminate.
   *
   * @param first minimum thickness of one ply [m]
   * @param second minimum thickness of the other ply [m]
   * @param interlayer thickness of the interlayer [m]
   * @param shearModulus G of the interlayer for the load's duration and temperature [Pa]
   * @param shortSide smallest in-plane dimension of the lite in bending [m]
   */
  public record Laminate(
      double first, double second, double interlayer, double shearModulus, double shortSide) {}

  /**
   * Monolithic thicknesses that behave alike.
   *
   * @param shearTransfer Γ, 0 to 1
   * @param forDeflection effective thickness for deflection [m]
   * @param forStressFirst effective thickness for the stress of the first ply [m]
   * @param forStressSecond effective thickness for the stress of the second ply [m]
   */
  public record Effective(
      double shearTransfer, double forDeflection, double forStressFirst, double forStressSecond) {}

  /** Effective thicknesses of a laminate. */
  public static Outcome<Effective> solve(Laminate laminate) {
    double thicker = Math.max(laminate.first(), laminate.second());
    double ratio = thicker / Math.min(laminate.first(), laminate.second());
    return Guard.range()
        .positive("thickness of the first ply", laminate.first(), "m")
        .positive("thickness of the second ply", laminate.second(), "m")
        .positive("interlayer thickness", laminate.interlayer(), "m")
        .positive("shear modulus of the interlayer", laminate.shearModulus(), "Pa")
        .positive("short side", laminate.shortSide(), "m")
        .that(ratio <= LARGEST_RATIO, "ratio of the two ply thicknesses", ratio, "", "at most 2")
        .that(
            laminate.interlayer() <= thicker,
            "interlayer thickness",
            laminate.interlayer(),
            "m",
            "at most that of the thicker ply")
        .then(() -> effective(laminate));
  }

  private static Effective effective(Laminate laminate) {
    double first = laminate.first();
    double second = laminate.second();
    double between = (first + second) / 2 + laminate.interlayer();
    double toFirst = between * first / (first + second);
    double toSecond = between * second / (first + second);
    double separation = first * toSecond * toSecond + second * toFirst * toFirst;
    double softness =
        9.6
            * GlassFailurePrediction.YOUNGS_MODULUS
            * separation
            * laminate.interlayer()
            / (laminate.shearModulus()
                * between
                * between
                * laminate.shortSide()
                * laminate.shortSide());
    double transfer = 1 / (1 + softness);
    double cube = first * first * first + second * second * second + 12 * transfer * separation;
    return new Effective(
        transfer,
        StrictMath.cbrt(cube),
        Math.sqrt(cube / (first + 2 * transfer * toSecond)),
        Math.sqrt(cube / (second + 2 * transfer * toFirst)));
  }
}
