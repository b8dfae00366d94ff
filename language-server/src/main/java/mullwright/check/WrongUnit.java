package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.Arrays;
import java.util.Optional;
import mullwright.model.ModelProblem;
import mullwright.quantity.Kind;
import mullwright.quantity.Unit;

/** A quantity of the wrong kind, or a number without the unit it needs. */
@AutoService(Rule.class)
public final class WrongUnit implements TextRule {
  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (ModelProblem problem : facts.problems()) {
      if (problem instanceof ModelProblem.WrongUnit wrong) {
        found
            .at(wrong.origin())
            .text()
            .what(
                "The "
                    + wrong.what()
                    + " must be "
                    + quantity(wrong.expected())
                    + ", not "
                    + quantity(wrong.found())
                    + ".")
            .mend(mend(wrong.expected()));
      } else if (problem instanceof ModelProblem.UnitMissing bare) {
        Findings.Draft draft =
            found
                .at(bare.origin())
                .text()
                .what("The " + bare.what() + " " + Words.quoted(bare.number()) + " has no unit.")
                .mend(
                    "Write its unit; for bare lengths one line such as units inches says it for the"
                        + " whole file.");
        facts
            .textAt(bare.origin())
            .filter(bare.number()::equals)
            .ifPresent(
                number -> {
                  draft.fix(Fixes.replace(bare.origin(), number + "\""));
                  draft.fix(Fixes.replace(bare.origin(), number + " mm"));
                });
      }
    }
  }

  private static String quantity(String words) {
    if (words.equals(Kind.RATIO.words())) {
      return "a plain number";
    }
    // a product the trade has no name for is told by its base units, as in m2 kg
    return kind(words).isPresent() ? Words.article(words) : words;
  }

  private static String mend(String expected) {
    if (expected.equals(Kind.RATIO.words())) {
      return "Write a plain number, without a unit.";
    }
    return kind(expected)
        .map(Unit::of)
        .map(units -> Words.either(units.stream().map(Unit::symbol).toList()))
        .map(symbols -> "Write it with a unit of " + expected + ": " + symbols + ".")
        .orElse("Give both sides the same kind of quantity.");
  }

  private static Optional<Kind> kind(String words) {
    return Arrays.stream(Kind.values()).filter(kind -> kind.words().equals(words)).findFirst();
  }
}
