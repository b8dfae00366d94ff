package mullwright.check;

import com.google.auto.service.AutoService;
import mullwright.model.ModelProblem;

/** Floors, rows or lines that do not ascend. */
@AutoService(Rule.class)
public final class OutOfOrder implements TextRule {
  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (ModelProblem problem : facts.model().problems()) {
      if (problem instanceof ModelProblem.OutOfOrder order) {
        found
            .at(order.origin())
            .text()
            .what(
                Words.sentence(
                    "the "
                        + order.what()
                        + " "
                        + Words.quoted(order.name())
                        + " is not beyond "
                        + Words.quoted(order.previous())))
            .mend("Put it further along, or take one of the two out.")
            .related(order.previousOrigin(), "stands here");
      }
    }
  }
}
