package mullwright.check;

import com.google.auto.service.AutoService;
import mullwright.model.Symbol;

/** A name that is given and never used. */
@AutoService(Rule.class)
public final class Unused implements TextRule {
  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.INFORMATION);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (Symbol symbol : facts.model().unusedNames()) {
      found
          .at(symbol.definition())
          .text()
          .what(
              "The "
                  + (symbol.kind() == Symbol.Kind.LET ? "value " : "part ")
                  + Words.quoted(symbol.name())
                  + " is given and never used.")
          .mend("Take it out, or use it.");
    }
  }
}
