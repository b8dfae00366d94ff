package mullwright.check;

import com.google.auto.service.AutoService;
import mullwright.model.ModelProblem;

/** Spacings or positions that do not fit the names they are given to. */
@AutoService(Rule.class)
public final class CountMismatch implements TextRule {
  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (ModelProblem problem : facts.model().problems()) {
      if (problem instanceof ModelProblem.CountMismatch counts) {
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
      }
    }
  }
}
