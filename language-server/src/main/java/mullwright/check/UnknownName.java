package mullwright.check;

import com.google.auto.service.AutoService;
import mullwright.model.ModelProblem;

/** A name that nothing in reach has: a floor, row, line, part or value that does not exist. */
@AutoService(Rule.class)
public final class UnknownName implements TextRule {
  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (ModelProblem problem : facts.problems()) {
      if (problem instanceof ModelProblem.UnknownName unknown) {
        Findings.Draft draft =
            found
                .at(unknown.origin())
                .text()
                .what(
                    "There is no "
                        + unknown.what()
                        + " named "
                        + Words.quoted(unknown.name())
                        + ".")
                .mend(Words.didYouMean(unknown.name(), unknown.candidates(), unknown.what()));
        for (String candidate : Words.near(unknown.name(), unknown.candidates())) {
          draft.fix(Fixes.replace(unknown.origin(), Words.asName(candidate)));
        }
      }
    }
  }
}
