package mullwright.analysis.deflection;

import mullwright.analysis.Formula;

/**
 * A limit of deflection for one span, with the branch of the rule that gave it.
 *
 * @param span length the limit was asked for [m]
 * @param limit greatest deflection allowed [m]
 * @param rule the branch that governs; its formula names the length {@code span}
 */
public record DeflectionLimit(double span, double limit, Formula rule) {

  /** Share of the limit that a deflection [m] of either sign uses; more than 1 is over. */
  public double utilisation(double deflection) {
    return Math.abs(deflection) / limit;
  }
}
