package mullwright.analysis.wall;

import java.util.Optional;
import mullwright.analysis.Formula;
import mullwright.analysis.deflection.DeflectionLimit;
import mullwright.analysis.deflection.TirA11Limit;
import mullwright.derivation.Derivation;
import mullwright.model.Criteria;
import mullwright.model.Given;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;

/**
 * How far a span of a wall may bend under wind: the default limit, or the project's where that is
 * stricter.
 *
 * <p>An end beyond the last support counts with twice its length. An end no longer than {@link
 * EndHold#GREATEST_SHARE} of the next span is no cantilever: it turns with that span, whose own
 * limit holds it.
 *
 * @param of the span
 * @param limit the limit, with the rule that governs
 * @param ratio the project's own ratio if it governs, 240 for L/240
 */
public record SpanLimit(SpanDeflection of, DeflectionLimit limit, Optional<Given<Double>> ratio) {
  private static final Formula OWN =
      new Formula("span ÷ deflection limit", "the project's criteria");

  /** The limit for a span. */
  public static SpanLimit of(SpanDeflection span, Criteria criteria) {
    double length = span.overhang() ? 2 * span.length() : span.length();
    DeflectionLimit usual = TirA11Limit.solve(length).solved().orElseThrow();
    Optional<Given<Double>> ratio =
        criteria
            .deflectionLimit()
            .filter(given -> given.value() > 0 && length / given.value() < usual.limit());
    DeflectionLimit limit =
        ratio.map(given -> new DeflectionLimit(length, length / given.value(), OWN)).orElse(usual);
    return new SpanLimit(span, limit, ratio);
  }

  /** True if the span bends further. */
  public boolean passed() {
    return limit.utilisation(of.deflection()) > 1 && !shortEnd();
  }

  private boolean shortEnd() {
    return of.overhang()
        && EndHold.of(of.run()).stream()
            .anyMatch(
                end -> !end.free() && end.support().y() == (end.lower() ? of.to() : of.from()));
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
        Derivation.computed(
            "span",
            Length.nearest(limit.span()),
            of.overhang() ? "2 × length beyond the last support" : "from support to support",
            of.overhang() ? "common practice" : "conventions of measure");
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
