package mullwright.analysis.wall;

import java.util.Optional;
import mullwright.analysis.Formula;
import mullwright.analysis.Outcome;
import mullwright.analysis.deflection.DeflectionLimit;
import mullwright.analysis.deflection.GlassEdgeLimit;
import mullwright.analysis.deflection.TirA11Limit;
import mullwright.derivation.Derivation;
import mullwright.model.Criteria;
import mullwright.model.Given;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;

/**
 * How far a span of a wall, or the edge of a lite, may bend under wind: the default limit, or the
 * project's where that is stricter.
 *
 * <p>An end beyond the last support counts with twice its length.
 *
 * @param limit the limit, with the rule that governs
 * @param ratio the project's own ratio if it governs, 240 for L/240
 * @param of how the length was taken
 */
public record SpanLimit(DeflectionLimit limit, Optional<Given<Double>> ratio, Of of) {
  private static final Formula OWN =
      new Formula("span ÷ deflection limit", "the project's criteria");

  /** What a limit is of, and so how its length is taken. */
  public enum Of {
    /** From support to support. */
    SPAN("from support to support", "conventions of measure"),
    /** An end beyond the last support. */
    OVERHANG("2 × length beyond the last support", "common practice"),
    /** The edge of a lite. */
    EDGE("length of the edge of the lite", "IBC 2403.3");

    private final String formula;
    private final String source;

    Of(String formula, String source) {
      this.formula = formula;
      this.source = source;
    }
  }

  /** No default limit is stricter than this share of the length. */
  private static final double STRICTEST = 240;

  /** True if a deflection [m] is within any limit a length [m] may have: told without the limit. */
  public static boolean surelyWithin(double deflection, double length, Criteria criteria) {
    double ratio = criteria.deflectionLimit().map(Given::value).orElse(STRICTEST);
    return Math.abs(deflection) * Math.max(STRICTEST, ratio) <= length;
  }

  /** The limit for a span of a vertical. */
  public static SpanLimit of(SpanDeflection span, Criteria criteria) {
    return span.overhang()
        ? of(Of.OVERHANG, 2 * span.length(), criteria)
        : of(Of.SPAN, span.length(), criteria);
  }

  /** The limit for a length [m], more than 0. */
  public static SpanLimit of(Of of, double length, Criteria criteria) {
    Outcome<DeflectionLimit> rule =
        of == Of.EDGE
            ? GlassEdgeLimit.solve(length, GlassEdgeLimit.Edition.RECENT)
            : TirA11Limit.solve(length);
    DeflectionLimit usual = rule.solved().orElseThrow();
    Optional<Given<Double>> ratio =
        criteria
            .deflectionLimit()
            .filter(given -> given.value() > 0 && length / given.value() < usual.limit());
    DeflectionLimit limit =
        ratio.map(given -> new DeflectionLimit(length, length / given.value(), OWN)).orElse(usual);
    return new SpanLimit(limit, ratio, of);
  }

  /** True if a deflection [m] is further; equal to the last digit is not. */
  public boolean passedBy(double deflection) {
    return limit.utilisation(deflection) > 1 + 1e-9;
  }

  /** The rule in short: {@code span ÷ 175}, {@code span ÷ 240 by the project}. */
  public String words() {
    return ratio
        .map(given -> "span ÷ " + plain(given.value()) + " by the project's criteria")
        .orElse(limit.rule().words());
  }

  private static String plain(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }

  /** The limit with how it came about. */
  public Derivation explain() {
    Derivation length =
        Derivation.computed("span", Length.nearest(limit.span()), of.formula, of.source);
    return ratio
        .map(
            given ->
                limit.rule().explain("limit", limit.limit(), Kind.LENGTH, length, stated(given)))
        .orElseGet(() -> limit.rule().explain("limit", limit.limit(), Kind.LENGTH, length));
  }

  private static Derivation stated(Given<Double> given) {
    return Derivation.stated(
        "deflection limit", Quantity.of(Rational.of(given.value())), Kind.RATIO, given.origin());
  }
}
