package mullwright.analysis.fastener;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Bearing of a bolt or screw on an aluminum part: R_n = d_e·t·F_tu, at most 2·D·t·F_tu.
 *
 * <p>Symbols: d_e edge distance in the direction of the force, D diameter, t thickness [m]; F_tu
 * tensile ultimate strength of the part [Pa]. Safety factor 1.95 for bolts, 3.0 for tapping screws.
 * Range: d_e ≥ 1.5·D. Source: Aluminum Design Manual, sections J.3 and J.5, from memory.
 */
public final class BearingStrength {
  private static final String SOURCE = "Aluminum Design Manual, sections J.3 and J.5, from memory";

  /** R_n. */
  public static final Formula NOMINAL =
      new Formula(
          "min(edge distance, 2 × fastener diameter) × thickness × tensile ultimate strength",
          SOURCE);

  /** R_n/Ω. */
  public static final Formula ALLOWABLE = new Formula("nominal bearing ÷ safety factor", SOURCE);

  private BearingStrength() {}

  /** What bears, with its safety factor. */
  public enum Kind {
    /** A bolt. */
    BOLT(1.95),
    /** A tapping screw. */
    TAPPING_SCREW(3.0);

    private final double safetyFactor;

    Kind(double safetyFactor) {
      this.safetyFactor = safetyFactor;
    }

    /** Safety factor Ω. */
    public double safetyFactor() {
      return safetyFactor;
    }
  }

  /**
   * A fastener in a part.
   *
   * @param kind what bears
   * @param diameter nominal diameter [m], more than 0
   * @param thickness thickness of the part [m], more than 0
   * @param edge edge distance in the direction of the force [m], at least 1.5 diameters
   * @param ultimate tensile ultimate strength of the part [Pa], more than 0
   */
  public record Input(Kind kind, double diameter, double thickness, double edge, double ultimate) {}

  /**
   * The strength.
   *
   * @param input what was put in
   * @param nominal nominal strength [N]
   * @param allowable allowable force [N]
   */
  public record Result(Input input, double nominal, double allowable) {}

  /** Computes the strength. */
  public static Outcome<Result> solve(Input in) {
    return Guard.range()
        .positive("fastener diameter", in.diameter(), "m")
        .positive("thickness", in.thickness(), "m")
        .that(
            in.edge() >= 1.5 * in.diameter() * (1 - 1e-12),
            "edge distance",
            in.edge(),
            "m",
            "at least 1.5 fastener diameters")
        .positive("tensile ultimate strength", in.ultimate(), "Pa")
        .then(
            () -> {
              double length = Math.min(in.edge(), 2 * in.diameter());
              double nominal = length * in.thickness() * in.ultimate();
              return new Result(in, nominal, nominal / in.kind().safetyFactor());
            });
  }
}
