package mullwright.check;

import com.google.auto.service.AutoService;
import mullwright.model.ModelProblem;
import mullwright.model.Origin;

/** Two statements of equal or crossing reach that set the same thing differently. */
@AutoService(Rule.class)
public final class Conflicting implements TextRule {
  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (ModelProblem problem : facts.model().problems()) {
      if (problem instanceof ModelProblem.Conflict conflict) {
        tell(conflict, conflict.origin(), conflict.first(), found);
        tell(conflict, conflict.first(), conflict.origin(), found);
      }
    }
  }

  // shown at both places: neither is more wrong than the other
  private static void tell(
      ModelProblem.Conflict conflict, Origin here, Origin there, Findings found) {
    found
        .at(here)
        .text()
        .what(
            "Two statements of equal reach disagree on the "
                + conflict.clause()
                + " of "
                + conflict.where()
                + ": "
                + conflict.one()
                + " and "
                + conflict.other()
                + ".")
        .mend("Make one of them narrower, so that it wins, or let them agree.")
        .related(there, "the other statement");
  }
}
