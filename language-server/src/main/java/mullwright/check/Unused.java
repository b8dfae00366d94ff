package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import mullwright.model.Symbol;

/** A name that is given and never used. */
@AutoService(Rule.class)
public final class Unused implements TextRule {
  /** The name of this rule. */
  public static final String NAME = "unused";

  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.INFORMATION);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (Symbol symbol : facts.model().unusedNames()) {
      Findings.Draft draft =
          found
              .at(symbol.definition())
              .text()
              .what(
                  "The "
                      + (symbol.kind() == Symbol.Kind.LET ? "value " : "part ")
                      + Words.quoted(symbol.name())
                      + " is given and never used.")
              .mend("Take it out, or use it.");
      new StatementEdits(facts)
          .remove(symbol.definition())
          .map(edit -> new Fix("Take " + symbol.name() + " out", List.of(edit)))
          .ifPresent(draft::fix);
    }
  }
}
