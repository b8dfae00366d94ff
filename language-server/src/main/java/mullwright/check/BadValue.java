package mullwright.check;

import com.google.auto.service.AutoService;
import mullwright.model.ModelProblem;

/**
 * A value that cannot be computed exactly: a division by zero or one that leaves a rest, a circle
 * of names, a size out of range.
 */
@AutoService(Rule.class)
public final class BadValue implements TextRule {
  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (ModelProblem problem : facts.model().problems()) {
      if (problem instanceof ModelProblem.BadValue bad) {
        Findings.Draft draft = found.at(bad.origin()).text().what(what(bad)).mend(mend(bad));
        bad.offer().ifPresent(offer -> draft.fix(Fixes.replace(bad.origin(), offer)));
      }
    }
  }

  private static String what(ModelProblem.BadValue bad) {
    return switch (bad.reason()) {
      case DIVISION_BY_ZERO -> Words.quoted(bad.text()) + " divides by zero.";
      case DIVISION_NOT_EXACT -> Words.quoted(bad.text()) + " does not come out exactly.";
      case OUT_OF_RANGE -> Words.quoted(bad.text()) + " is out of range.";
      case NOT_A_WHOLE_NUMBER -> Words.quoted(bad.text()) + " is not a whole number.";
      case NOT_READABLE -> Words.quoted(bad.text()) + " cannot be read as a value.";
      case CIRCULAR -> Words.quoted(bad.text()) + " is defined by itself.";
    };
  }

  private static String mend(ModelProblem.BadValue bad) {
    return switch (bad.reason()) {
      case DIVISION_BY_ZERO -> "Divide by something else.";
      case DIVISION_NOT_EXACT ->
          bad.offer()
              .map(offer -> "Write " + offer + ": the rest falls to the last bay.")
              .orElse("Write the length itself, or divide so that it comes out.");
      case OUT_OF_RANGE -> "A length is at most 10 km either way.";
      case NOT_A_WHOLE_NUMBER -> "Write a whole number, 1 or more.";
      case NOT_READABLE -> "Write it as in 5'-6 1/2\", 3/8\", 1524 mm or 32 psf.";
      case CIRCULAR -> "Break the circle: one of the names needs a value of its own.";
    };
  }
}
