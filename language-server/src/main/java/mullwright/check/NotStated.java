package mullwright.check;

import com.google.auto.service.AutoService;
import mullwright.model.ModelProblem;

/** Something a statement or a wall needs that the text does not say. */
@AutoService(Rule.class)
public final class NotStated implements TextRule {
  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (ModelProblem problem : facts.problems()) {
      if (problem instanceof ModelProblem.Missing missing) {
        found
            .at(missing.origin())
            .text()
            .what(Words.sentence(missing.where() + says(missing.where()) + missing.what()))
            .mend(
                missing
                    .offer()
                    .map(offer -> "Write for instance " + offer + ".")
                    .orElse("Add it."));
      }
    }
  }

  private static String says(String where) {
    return where.startsWith("members") ? " do not say " : " does not say ";
  }
}
