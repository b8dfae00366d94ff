package mullwright.analysis.deflection;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Wind deflection of a framing member by the European product standard.
 *
 * <p>L is the span [m]: L/200 up to 3 m; 5 mm + L/300 up to 7.5 m; L/250 beyond. Continuous at both
 * joins. Source: EN 13830:2015, from memory.
 */
public final class En13830Limit {
  private static final String SOURCE = "EN 13830:2015, from memory";
  private static final double SHORT = 3.0;
  private static final double LONG = 7.5;

  /** L/200. */
  public static final Formula SHORT_SPAN = new Formula("span ÷ 200", SOURCE);

  /** 5 mm + L/300. */
  public static final Formula MIDDLE_SPAN = new Formula("5 mm + span ÷ 300", SOURCE);

  /** L/250. */
  public static final Formula LONG_SPAN = new Formula("span ÷ 250", SOURCE);

  private En13830Limit() {}

  /** Computes the limit for a span [m]. */
  public static Outcome<DeflectionLimit> solve(double span) {
    return Guard.range().positive("span", span, "m").then(() -> limit(span));
  }

  private static DeflectionLimit limit(double span) {
    if (span <= SHORT) {
      return new DeflectionLimit(span, span / 200, SHORT_SPAN);
    }
    return span < LONG
        ? new DeflectionLimit(span, 0.005 + span / 300, MIDDLE_SPAN)
        : new DeflectionLimit(span, span / 250, LONG_SPAN);
  }
}
