package mullwright.analysis.deflection;

import mullwright.analysis.Formula;
import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Wind deflection of a glass edge from the line between its ends, by edition of the code.
 *
 * <p>L is the length of the edge of one lite [m], not the span of the member. Recent editions:
 * L/175 up to 13'-6", L/240 + 1/4 in beyond. Older editions: L/175 or 3/4 in, whichever is less.
 * Source: IBC 2403.3; the older text from memory.
 */
public final class GlassEdgeLimit {
  private static final String RECENT = "IBC 2403.3, recent editions";
  private static final String OLDER = "IBC 2403.3, older editions, from memory";
  private static final double QUARTER_INCH = 0.25 * 0.0254;
  private static final double THREE_QUARTER_INCH = 3 * QUARTER_INCH;

  /** Recent editions, L/175. */
  public static final Formula SHORT_EDGE = new Formula("span ÷ 175", RECENT);

  /** Recent editions, L/240 + 1/4 in. */
  public static final Formula LONG_EDGE = new Formula("span ÷ 240 + 1/4\"", RECENT);

  /** Older editions, L/175. */
  public static final Formula OLDER_SHORT_EDGE = new Formula("span ÷ 175", OLDER);

  /** Older editions, 3/4 in. */
  public static final Formula OLDER_LONG_EDGE = new Formula("3/4\"", OLDER);

  private GlassEdgeLimit() {}

  /** Which text of the code holds. */
  public enum Edition {
    /** Two branches, without a bound. */
    RECENT,
    /** L/175, never more than 3/4 in. */
    OLDER
  }

  /** Computes the limit for a glass edge [m]. */
  public static Outcome<DeflectionLimit> solve(double edge, Edition edition) {
    return edition == Edition.RECENT ? recent(edge) : older(edge);
  }

  private static Outcome<DeflectionLimit> recent(double edge) {
    return Guard.range()
        .positive("glass edge", edge, "m")
        .then(
            () ->
                edge <= TirA11Limit.LONGEST_SHORT_SPAN
                    ? new DeflectionLimit(edge, edge / 175, SHORT_EDGE)
                    : new DeflectionLimit(edge, edge / 240 + QUARTER_INCH, LONG_EDGE));
  }

  private static Outcome<DeflectionLimit> older(double edge) {
    return Guard.range()
        .positive("glass edge", edge, "m")
        .then(
            () ->
                edge / 175 <= THREE_QUARTER_INCH
                    ? new DeflectionLimit(edge, edge / 175, OLDER_SHORT_EDGE)
                    : new DeflectionLimit(edge, THREE_QUARTER_INCH, OLDER_LONG_EDGE));
  }
}
