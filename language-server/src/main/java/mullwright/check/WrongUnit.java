package mullwright.check;

import com.google.auto.service.AutoService;
import mullwright.model.ModelProblem;

/** A quantity of the wrong kind, or a number without the unit it needs. */
@AutoService(Rule.class)
public final class WrongUnit implements TextRule {
  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (ModelProblem problem : facts.model().problems()) {
      if (problem instanceof ModelProblem.WrongUnit wrong) {
        found
            .at(wrong.origin())
            .text()
            .what(
                Words.sentence(
                    "the "
                        + wrong.what()
                        + " is "
                        + Words.article(wrong.expected())
                        + ", not "
                        + Words.article(wrong.found())))
            .mend("Write it with a unit of " + wrong.expected() + ".");
      } else if (problem instanceof ModelProblem.UnitMissing bare) {
        found
            .at(bare.origin())
            .text()
            .what(Words.sentence("the " + bare.what() + " " + bare.number() + " has no unit"))
            .mend("Write its unit, or say once in this file what a bare number is: units inches.");
      }
    }
  }
}
