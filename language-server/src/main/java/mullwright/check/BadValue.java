package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import mullwright.model.ModelProblem;
import mullwright.model.Origin;
import mullwright.syntax.Clause;
import mullwright.syntax.Expression;
import mullwright.syntax.StatementKind;
import mullwright.syntax.TextRange;

/**
 * A value that cannot be computed exactly: a division by zero or one that leaves a rest, a circle
 * of names, a size out of range.
 */
@AutoService(Rule.class)
public final class BadValue implements TextRule {
  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (ModelProblem problem : facts.problems()) {
      if (problem instanceof ModelProblem.BadValue bad) {
        Optional<Fix> fix = fix(bad, facts);
        Findings.Draft draft =
            found.at(bad.origin()).text().what(what(bad)).mend(mend(bad, fix, facts));
        fix.ifPresent(draft::fix);
      }
    }
  }

  private static String what(ModelProblem.BadValue bad) {
    return switch (bad.reason()) {
      case DIVISION_BY_ZERO -> Words.quoted(bad.text()) + " divides by zero.";
      case DIVISION_NOT_EXACT -> Words.quoted(bad.text()) + " does not come out exactly.";
      case OUT_OF_RANGE ->
          Words.quoted(bad.text())
              + (bad.offer().isPresent()
                  ? " is finer than lengths are kept."
                  : " is out of range.");
      case NOT_A_WHOLE_NUMBER -> Words.quoted(bad.text()) + " is no count.";
      case NOT_READABLE -> Words.quoted(bad.text()) + " cannot be read as a value.";
      case CIRCULAR -> bad.text() + " goes round in a circle.";
    };
  }

  private static String mend(ModelProblem.BadValue bad, Optional<Fix> fix, TextFacts facts) {
    return switch (bad.reason()) {
      case DIVISION_BY_ZERO -> "Divide by another number.";
      case DIVISION_NOT_EXACT ->
          fix.map(it -> it.title() + ": the rest falls to the last bay.")
              .orElse("Write the length itself, or divide so that it comes out.");
      case OUT_OF_RANGE ->
          fix.map(it -> it.title() + ", the nearest length.").orElseGet(() -> bounds(bad, facts));
      case NOT_A_WHOLE_NUMBER -> "Write a whole number, 1 or more.";
      case NOT_READABLE ->
          fix.map(it -> it.title() + "?")
              .orElse("Write it as in 5'-6 1/2\", 3/8\", 1524 mm or 32 psf.");
      case CIRCULAR -> "Break the circle: one of them must stand by itself.";
    };
  }

  private static String bounds(ModelProblem.BadValue bad, TextFacts facts) {
    boolean corner =
        facts.statementAt(bad.origin()).filter(it -> it.kind() == StatementKind.CORNER).isPresent();
    if (corner) {
      return "The angle of a corner lies between 0 and 360 deg, 180 deg being straight on.";
    }
    return step(bad, facts).isPresent()
        ? "A spacing is more than nothing; lengths and places reach to 10 km."
        : "Lengths and places reach to 10 km either way, other numbers to 1e30.";
  }

  private static Optional<Fix> fix(ModelProblem.BadValue bad, TextFacts facts) {
    return switch (bad.reason()) {
      case DIVISION_NOT_EXACT -> step(bad, facts).flatMap(step -> equalSpaces(bad, step));
      case OUT_OF_RANGE, NOT_READABLE ->
          bad.offer().map(offer -> Fixes.replace(bad.origin(), respelled(bad, offer)));
      default -> Optional.empty();
    };
  }

  /**
   * {@code 7 @ 30'-0" / 7} becomes {@code 7 equal in 30'-0"}, if it is told as often as divided.
   */
  private static Optional<Fix> equalSpaces(ModelProblem.BadValue bad, Clause.Spaced.Step step) {
    Origin whole = new Origin(bad.origin().file(), bad.origin().segment(), step.range());
    String count = step.count().map(Expression.Literal::number).orElse("1");
    return bad.offer()
        .filter(offer -> offer.startsWith("spaced " + count + " equal "))
        .map(
            offer ->
                new Fix(
                    "Write " + offer,
                    List.of(new Fix.Edit(whole, offer.substring("spaced ".length())))));
  }

  /** The step of a {@code spaced} clause the value stands in. */
  private static Optional<Clause.Spaced.Step> step(ModelProblem.BadValue bad, TextFacts facts) {
    TextRange at = bad.origin().range();
    return facts.statementAt(bad.origin()).stream()
        .flatMap(statement -> statement.clauses().stream())
        .filter(Clause.Spaced.class::isInstance)
        .flatMap(clause -> ((Clause.Spaced) clause).steps().stream())
        .filter(step -> step.range().start() <= at.start() && at.end() <= step.range().end())
        .findFirst();
  }

  /** For a value only its unit of which is mistaken, the value with the unit offered. */
  private static String respelled(ModelProblem.BadValue bad, String offer) {
    if (bad.reason() != ModelProblem.BadValue.Reason.NOT_READABLE) {
      return offer;
    }
    String number = bad.text().replaceFirst("\\s*[\\p{L}./]+$", "");
    return offer.equals("\"") || offer.equals("'") ? number + offer : number + " " + offer;
  }
}
