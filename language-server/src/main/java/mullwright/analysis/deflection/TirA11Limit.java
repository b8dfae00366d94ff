package mullwright.analysis.deflection;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Wind deflection of a member supporting glass: L/175 up to 13'-6", L/240 + 1/4 in beyond.
 *
 * <p>L is the span of the member from anchor to anchor [m]. At 13'-6" the two branches differ by
 * 0.0007 in; the first holds there. Range: spans greater than 0. Source: AAMA TIR-A11, from memory;
 * the same two limits stand in IBC 2403.3, recent editions.
 */
public final class TirA11Limit {
  /** Longest span of the first branch [m]: 13 ft 6 in. */
  public static final double LONGEST_SHORT_SPAN = 162 * 0.0254;

  private static final String SOURCE = "AAMA TIR-A11, from memory";
  private static final double QUARTER_INCH = 0.25 * 0.0254;

  /** L/175. */
  public static final Formula SHORT_SPAN = new Formula("span ÷ 175", SOURCE);

  /** L/240 + 1/4 in. */
  public static final Formula LONG_SPAN = new Formula("span ÷ 240 + 1/4\"", SOURCE);

  private TirA11Limit() {}

  /** Computes the limit for a span [m]. */
  public static Outcome<DeflectionLimit> solve(double span) {
    return Guard.range()
        .positive("span", span, "m")
        .then(
            () ->
                span <= LONGEST_SHORT_SPAN
                    ? new DeflectionLimit(span, span / 175, SHORT_SPAN)
                    : new DeflectionLimit(span, span / 240 + QUARTER_INCH, LONG_SPAN));
  }
}
