package mullwright.analysis.deflection;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Sag of a horizontal under weight by the European product standard: L/500 or 3 mm.
 *
 * <p>L is the span of the horizontal [m]; the lesser holds. Source: EN 13830, from memory.
 */
public final class En13830DeadLoadLimit {
  private static final String SOURCE = "EN 13830, from memory";
  private static final double THREE_MILLIMETRES = 0.003;

  /** L/500. */
  public static final Formula SHORT_SPAN = new Formula("span ÷ 500", SOURCE);

  /** 3 mm. */
  public static final Formula LONG_SPAN = new Formula("3 mm", SOURCE);

  private En13830DeadLoadLimit() {}

  /** Computes the limit for a span [m]. */
  public static Outcome<DeflectionLimit> solve(double span) {
    return Guard.range()
        .positive("span", span, "m")
        .then(
            () ->
                span / 500 <= THREE_MILLIMETRES
                    ? new DeflectionLimit(span, span / 500, SHORT_SPAN)
                    : new DeflectionLimit(span, THREE_MILLIMETRES, LONG_SPAN));
  }
}
