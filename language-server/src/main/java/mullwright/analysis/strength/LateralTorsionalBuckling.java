package mullwright.analysis.strength;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Moment at which an aluminum member buckles sideways between braces of its compressed flange.
 *
 * <pre>
 * λ   = 2.3·√(L_b·S_c/(C_b·√(I_y·J)))
 * B_c = F_cy·(1 + √(F_cy/2250)), D_c = (B_c/10)·√(B_c/E), C_c = 0.41·B_c/D_c     (F, B, D, E in ksi)
 * M_p = min(Z·F_cy, 1.5·S_c·F_cy)
 * M_n = M_p·(1 − λ/C_c) + π²·E·λ·S_c/C_c³    for λ &lt; C_c
 * M_n = π²·E·S_c/λ²                          for λ ≥ C_c;   allowable M_n/1.65
 * </pre>
 *
 * <p>Symbols: L_b unbraced length of the compressed flange [m]; S_c section modulus of the
 * compressed side, Z plastic modulus [m³]; I_y second moment about the weak axis, J torsion
 * constant [m⁴]; C_b moment-shape factor, 1 is safe; F_cy compressive yield strength, E modulus
 * [Pa]; λ slenderness. Range: artificially aged tempers (T5 to T9), shapes for which this λ holds
 * (closed, or open with their true J), no welds, walls too thick to buckle locally. Source:
 * Aluminum Design Manual, section F.4, from memory.
 */
public final class LateralTorsionalBuckling {
  private static final String SOURCE = "Aluminum Design Manual, section F.4, from memory";

  /** λ. */
  public static final Formula SLENDERNESS =
      new Formula(
          "2.3 × √(unbraced length × section modulus"
              + " ÷ (moment-shape factor × √(weak-axis second moment × torsion constant)))",
          SOURCE);

  /** M_n/1.65. */
  public static final Formula ALLOWABLE = new Formula("buckling moment ÷ 1.65", SOURCE);

  private LateralTorsionalBuckling() {}

  /**
   * A member between braces.
   *
   * @param unbraced unbraced length of the compressed flange [m], more than 0
   * @param sectionModulus section modulus of the compressed side [m³], more than 0
   * @param plasticModulus plastic section modulus [m³], at least the section modulus
   * @param weakSecondMoment second moment about the weak axis [m⁴], more than 0
   * @param torsionConstant torsion constant [m⁴], more than 0
   * @param momentShape moment-shape factor C_b, 1 or more
   * @param compressiveYield compressive yield strength [Pa], more than 0
   * @param modulus modulus of elasticity [Pa], more than 0
   */
  public record Input(
      double unbraced,
      double sectionModulus,
      double plasticModulus,
      double weakSecondMoment,
      double torsionConstant,
      double momentShape,
      double compressiveYield,
      double modulus) {}

  /**
   * The buckling moment.
   *
   * @param input what was put in
   * @param slenderness λ
   * @param intercept intercept B_c of the inelastic buckling line [Pa]
   * @param decline slope D_c of that line [Pa]
   * @param intersection slenderness C_c from which on buckling is elastic
   * @param nominal moment at which it buckles or yields, M_n [N·m]
   * @param allowable M_n/1.65 [N·m]
   */
  public record Result(
      Input input,
      double slenderness,
      double intercept,
      double decline,
      double intersection,
      double nominal,
      double allowable) {

    /** Whether it buckles before any fibre yields. */
    public boolean elastic() {
      return slenderness >= intersection;
    }
  }

  /** Computes the buckling moment. */
  public static Outcome<Result> solve(Input in) {
    return Guard.range()
        .positive("unbraced length", in.unbraced(), "m")
        .positive("section modulus", in.sectionModulus(), "m³")
        .that(
            in.plasticModulus() >= in.sectionModulus()
                && in.plasticModulus() < Double.POSITIVE_INFINITY,
            "plastic section modulus",
            in.plasticModulus(),
            "m³",
            "at least the elastic one")
        .positive("weak-axis second moment", in.weakSecondMoment(), "m⁴")
        .positive("torsion constant", in.torsionConstant(), "m⁴")
        .that(
            in.momentShape() >= 1 && in.momentShape() <= 3,
            "moment-shape factor",
            in.momentShape(),
            "",
            "from 1 to 3")
        .positive("compressive yield strength", in.compressiveYield(), "Pa")
        .positive("modulus of elasticity", in.modulus(), "Pa")
        .then(() -> compute(in));
  }

  private static Result compute(Input in) {
    double weak = Math.sqrt(in.weakSecondMoment() * in.torsionConstant());
    double slenderness =
        2.3 * Math.sqrt(in.unbraced() * in.sectionModulus() / (in.momentShape() * weak));
    // The constants are fitted in ksi.
    double yield = in.compressiveYield() / Ksi.PASCALS;
    double modulus = in.modulus() / Ksi.PASCALS;
    double b = yield * (1 + Math.sqrt(yield / 2250));
    double d = b / 10 * Math.sqrt(b / modulus);
    double intersection = 0.41 * b / d;
    double stiff = Math.PI * Math.PI * in.modulus() * in.sectionModulus();
    double plastic =
        in.compressiveYield() * Math.min(in.plasticModulus(), 1.5 * in.sectionModulus());
    double nominal =
        slenderness < intersection
            ? plastic * (1 - slenderness / intersection)
                + stiff * slenderness / Math.pow(intersection, 3)
            : stiff / (slenderness * slenderness);
    return new Result(
        in,
        slenderness,
        b * Ksi.PASCALS,
        d * Ksi.PASCALS,
        intersection,
        nominal,
        nominal / AluminumAllowable.YIELD_FACTOR);
  }
}
