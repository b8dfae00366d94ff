package mullwright.check;

import com.google.auto.service.AutoService;
import mullwright.model.ModelProblem;

/** One name given to two things, or found in two catalogs: nobody could tell which is meant. */
@AutoService(Rule.class)
public final class Duplicate implements TextRule {
  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (ModelProblem problem : facts.model().problems()) {
      if (problem instanceof ModelProblem.Duplicate twice) {
        found
            .at(twice.origin())
            .text()
            .what("The " + twice.what() + " " + Words.quoted(twice.name()) + " is there already.")
            .mend("Give one of the two another name.")
            .related(twice.first(), "first given here");
      } else if (problem instanceof ModelProblem.NameFromTwo two) {
        found
            .at(two.origin())
            .text()
            .what(
                "The "
                    + two.what()
                    + " "
                    + Words.quoted(two.name())
                    + " comes from two files, "
                    + two.fileOne()
                    + " and "
                    + two.fileTwo()
                    + ".")
            .mend("Use one of the two files only, or rename the part in one of them.");
      }
    }
  }
}
