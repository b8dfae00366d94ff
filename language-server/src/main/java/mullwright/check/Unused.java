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
          .what(Words.quoted(symbol.name()) + " is not used.")
          .mend("Take it out, or use it.");
    }
  }
}
