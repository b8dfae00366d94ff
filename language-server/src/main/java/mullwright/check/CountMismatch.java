package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.Optional;
import mullwright.model.ModelProblem;
import mullwright.model.Origin;

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
                .mend(Words.sentence(counts.hint()));
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
}
