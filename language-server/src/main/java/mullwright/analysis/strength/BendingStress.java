package mullwright.analysis.strength;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Bending stress at the outermost fibre against an allowable stress: f_b = M/S.
 *
 * <p>Symbols: M bending moment [N·m]; S elastic section modulus of that side [m³]. Range: elastic,
 * bending about one principal axis. Source: textbook.
 */
public final class BendingStress {
  /** f_b = M/S. */
  public static final Formula STRESS = new Formula("moment ÷ section modulus", "closed form");

  private BendingStress() {}

  /**
   * A section in bending.
   *
   * @param moment bending moment [N·m], of either sign
   * @param sectionModulus elastic section modulus [m³], more than 0
   * @param allowable allowable stress [Pa], more than 0
   */
  public record Input(double moment, double sectionModulus, double allowable) {}

  /**
   * The stress.
   *
   * @param input what was put in
   * @param stress bending stress [Pa], never negative
   * @param utilisation stress over allowable; more than 1 is too much
   */
  public record Result(Input input, double stress, double utilisation) {

    /** Whether the stress is within the allowable. */
    public boolean holds() {
      return utilisation <= 1;
    }
  }

  /** Computes stress and utilisation. */
  public static Outcome<Result> solve(Input in) {
    return Guard.range()
        .finite("moment", in.moment(), "N·m")
        .positive("section modulus", in.sectionModulus(), "m³")
        .positive("allowable stress", in.allowable(), "Pa")
        .then(
            () -> {
              double stress = Math.abs(in.moment()) / in.sectionModulus();
              return new Result(in, stress, stress / in.allowable());
            });
  }
}
