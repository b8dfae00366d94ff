package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import mullwright.model.ModelProblem;

/** A property its part does not have, or one written in another form than it is read in. */
@AutoService(Rule.class)
public final class UnknownProperty implements TextRule {
  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (ModelProblem problem : facts.problems()) {
      if (problem instanceof ModelProblem.CommaAtEnd comma) {
        found
            .at(comma.origin())
            .text()
            .what(
                "The comma joins the next line to this one, so that "
                    + Words.quoted(comma.next())
                    + " is read as more of "
                    + Words.quoted(comma.property())
                    + ".")
            .mend("Take the comma out.")
            .fix(new Fix("Take the comma out", List.of(new Fix.Edit(comma.origin(), ""))));
      }
      if (problem instanceof ModelProblem.BadProperty bad) {
        if (bad.pattern().isEmpty()) {
          Findings.Draft draft =
              found
                  .at(bad.origin())
                  .text()
                  .what(
                      Words.sentence(
                          having(bad.kind()) + " no property " + Words.quoted(bad.property())))
                  .mend(Words.didYouMean(bad.property(), bad.known(), "property"));
          for (String known : Words.near(bad.property(), bad.known())) {
            draft.fix(Fixes.replace(bad.origin(), known));
          }
        } else {
          found
              .at(bad.origin())
              .text()
              .what(
                  Words.sentence(
                      "the property "
                          + Words.quoted(bad.property())
                          + " of "
                          + noun(bad.kind())
                          + " cannot be read in this form"))
              .mend("Write it as: " + bad.property() + " " + bad.pattern() + ".");
        }
      }
    }
  }

  private static String having(String kind) {
    return noun(kind) + (kind.equals("criteria") ? " have" : " has");
  }

  // the blocks of a wall or project are no things one could have two of
  private static String noun(String kind) {
    return kind.equals("criteria") || kind.equals("fabrication") ? kind : Words.article(kind);
  }
}
