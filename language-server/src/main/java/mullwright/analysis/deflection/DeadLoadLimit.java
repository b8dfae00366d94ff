package mullwright.analysis.deflection;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Sag of a horizontal under glass in the plane of the wall: L/360 or 1/8 in, whichever is less.
 *
 * <p>L is the span of the horizontal [m]. Usual specification text; bite and edge clearance below
 * it are held elsewhere. Source: common practice.
 */
public final class DeadLoadLimit {
  private static final String SOURCE = "common practice";
  private static final double EIGHTH_INCH = 0.125 * 0.0254;

  /** L/360. */
  public static final Formula SHORT_SPAN = new Formula("span ÷ 360", SOURCE);

  /** 1/8 in. */
  public static final Formula LONG_SPAN = new Formula("1/8\"", SOURCE);

  private DeadLoadLimit() {}

  /** Computes the limit for a span [m]. */
  public static Outcome<DeflectionLimit> solve(double span) {
    return Guard.range()
        .positive("span", span, "m")
        .then(
            () ->
                span / 360 <= EIGHTH_INCH
                    ? new DeflectionLimit(span, span / 360, SHORT_SPAN)
                    : new DeflectionLimit(span, EIGHTH_INCH, LONG_SPAN));
  }
}
