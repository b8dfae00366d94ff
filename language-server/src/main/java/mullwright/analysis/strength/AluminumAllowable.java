package mullwright.analysis.strength;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Allowable tensile stress of aluminum in bending: the lesser of F_ty/1.65 and F_tu/1.95.
 *
 * <p>Symbols: F_ty, F_tu tensile yield and ultimate strength [Pa]; 1.65 and 1.95 safety factors of
 * yield and rupture for building-type structures. Range: away from welds, no buckling governing,
 * loads in allowable-strength combinations (service wind). Source: Aluminum Design Manual, chapters
 * B, D and F, from memory.
 */
public final class AluminumAllowable {
  /** Safety factor on yield. */
  public static final double YIELD_FACTOR = 1.65;

  /** Safety factor on rupture. */
  public static final double RUPTURE_FACTOR = 1.95;

  private static final String SOURCE = "Aluminum Design Manual, chapters B, D and F, from memory";

  /** F_ty/1.65. */
  public static final Formula YIELD = new Formula("tensile yield strength ÷ 1.65", SOURCE);

  /** F_tu/1.95. */
  public static final Formula RUPTURE = new Formula("tensile ultimate strength ÷ 1.95", SOURCE);

  private AluminumAllowable() {}

  /**
   * An alloy at a thickness.
   *
   * @param alloy the alloy
   * @param thickness greatest thickness of the part [m], more than 0
   */
  public record Input(AluminumAlloy alloy, double thickness) {}

  /**
   * Both limits.
   *
   * @param input what was put in
   * @param byYield F_ty/1.65 [Pa]
   * @param byRupture F_tu/1.95 [Pa]
   */
  public record Result(Input input, double byYield, double byRupture) {

    /** The one that governs [Pa]. */
    public double stress() {
      return Math.min(byYield, byRupture);
    }

    /** Formula of the one that governs. */
    public Formula rule() {
      return byYield <= byRupture ? YIELD : RUPTURE;
    }
  }

  /** Computes both limits; refused beyond the thickness the strengths are tabulated for. */
  public static Outcome<Result> solve(Input in) {
    AluminumAlloy alloy = in.alloy();
    return Guard.range()
        .positive("thickness", in.thickness(), "m")
        .that(
            in.thickness() <= alloy.thickest(),
            "thickness of " + alloy.designation(),
            in.thickness(),
            "m",
            "at most " + alloy.thickest() + " m, to which its strengths are tabulated")
        .positive("tensile yield strength", alloy.yield(), "Pa")
        .positive("tensile ultimate strength", alloy.ultimate(), "Pa")
        .then(
            () -> new Result(in, alloy.yield() / YIELD_FACTOR, alloy.ultimate() / RUPTURE_FACTOR));
  }
}
