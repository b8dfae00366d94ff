package mullwright.check;

import com.google.auto.service.AutoService;
import mullwright.model.ModelProblem;

/** A limit of the program was passed; what lies beyond is not read. */
@AutoService(Rule.class)
public final class TooMuch implements TextRule {
  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (ModelProblem problem : facts.problems()) {
      if (problem instanceof ModelProblem.TooMany many) {
        found
            .at(many.origin())
            .text()
            .what(what(many))
            .mend("Split the wall or the file, or mend the number; the rest is not read.");
      }
    }
  }

  private static String what(ModelProblem.TooMany many) {
    String asked =
        many.limit().equals("every")
            ? "“every " + many.asked() + "” is too much"
            : "Too many " + many.limit() + ": " + many.asked();
    return asked + ", at most " + many.allowed() + ".";
  }
}
