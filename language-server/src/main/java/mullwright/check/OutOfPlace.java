package mullwright.check;

import com.google.auto.service.AutoService;
import mullwright.model.ModelProblem;

/**
 * Something that stands where it may not: a line that does not pass the place, a corner where no
 * face ends.
 */
@AutoService(Rule.class)
public final class OutOfPlace implements TextRule {
  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (ModelProblem problem : facts.problems()) {
      if (problem instanceof ModelProblem.OutOfPlace stray) {
        found
            .at(stray.origin())
            .text()
            .what(Words.sentence(stray.what()))
            .mend(Words.sentence(stray.why()));
      }
    }
  }
}
