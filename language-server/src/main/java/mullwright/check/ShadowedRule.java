package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import mullwright.model.ModelProblem;

/** A statement that narrower ones override everywhere: it says nothing any more. */
@AutoService(Rule.class)
public final class ShadowedRule implements TextRule {
  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.WARNING);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (ModelProblem problem : facts.problems()) {
      if (problem instanceof ModelProblem.Shadowed shadowed) {
        Findings.Draft draft =
            found
                .at(shadowed.origin())
                .text()
                .what(
                    Words.sentence(
                        "narrower statements override this " + shadowed.what() + " everywhere"))
                .mend("Take it out, or make the narrower ones narrower.");
        shadowed.by().forEach(other -> draft.related(other, "overrides it"));
        new StatementEdits(facts)
            .remove(shadowed.origin())
            .map(edit -> new Fix("Take this " + shadowed.what() + " out", List.of(edit)))
            .ifPresent(draft::fix);
      }
    }
  }
}
