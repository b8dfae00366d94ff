package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.Optional;
import mullwright.model.ModelProblem;
import mullwright.model.Origin;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.TextRange;

/** Spacings or positions that do not fit the names they are given to. */
@AutoService(Rule.class)
public final class CountMismatch implements TextRule {
  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (ModelProblem problem : facts.problems()) {
      if (problem instanceof ModelProblem.CountMismatch counts) {
        Optional<Fix> each = atForEach(counts, facts);
        Findings.Draft draft =
            found
                .at(counts.origin())
                .text()
                .what(
                    "The "
                        + counts.what()
                        + " do not fit: "
                        + counts.names()
                        + " wanted, "
                        + counts.given()
                        + " given.")
                .mend(
                    each.isPresent()
                        ? "Write @ for at: so many spaces of that width."
                        : Words.sentence(counts.hint()));
        each.ifPresent(draft::fix);
        StatementEdits edits = new StatementEdits(facts);
        Optional<Origin> count = edits.countOfSpacing(counts.origin());
        // equal bays shared out of a length would come out otherwise: not for a slip of the pen
        count
            .filter(
                at -> facts.textAt(at).filter(Long.toString(counts.given())::equals).isPresent())
            .filter(at -> counts.names() > 0)
            .map(at -> Fixes.replace(at, Long.toString(counts.names())))
            .ifPresent(draft::fix);
      }
    }
  }

  /** {@code spaced 5 at 5'-0"}, read as one space of 5: the sign is meant. */
  private static Optional<Fix> atForEach(ModelProblem.CountMismatch counts, TextFacts facts) {
    Origin at = counts.origin();
    Optional<Clause> place = facts.statementAt(at).flatMap(it -> it.clause(ClauseWord.AT));
    String spaced = facts.textAt(at).orElse("");
    if (counts.given() != 1
        || place.isEmpty()
        || place.get().range().start() < at.range().end()
        || !spaced.endsWith(" " + counts.names())) {
      return Optional.empty();
    }
    int start = place.get().range().start();
    TextRange word = new TextRange(start, start + ClauseWord.AT.spelling().length());
    return Optional.of(Fixes.replace(new Origin(at.file(), at.segment(), word), "@"));
  }
}
