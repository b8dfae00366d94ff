package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import mullwright.model.ModelProblem;
import mullwright.model.Part;
import mullwright.model.PartKind;

/** Something a statement or a wall needs that the text does not say. */
@AutoService(Rule.class)
public final class NotStated implements TextRule {
  private static final String MEMBERS = "members";

  /** Words that need no quotes, in a list. */
  private static final String PLAIN = "[\\p{L}\\p{Nd}_.,\\- ]+";

  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    for (ModelProblem problem : facts.problems()) {
      if (problem instanceof ModelProblem.Missing missing) {
        Findings.Draft draft =
            found
                .at(missing.origin())
                .text()
                .what(Words.sentence(missing.where() + says(missing.where()) + missing.what()))
                .mend(
                    missing
                        .offer()
                        .map(offer -> "Write for instance " + offer + ".")
                        .orElse("Add it."));
        fix(missing, facts).ifPresent(draft::fix);
      }
    }
  }

  // what the text has all names of; a length that is not stated nobody can guess
  private static Optional<Fix> fix(ModelProblem.Missing missing, TextFacts facts) {
    StatementEdits edits = new StatementEdits(facts);
    if (missing.where().startsWith(MEMBERS)) {
      return missing
          .offer()
          .filter(Pattern.compile(PLAIN).asMatchPredicate())
          .flatMap(
              offer ->
                  edits
                      .addInside(missing.origin(), offer)
                      .map(edit -> new Fix("Add " + offer, List.of(edit))));
    }
    List<Part> systems = List.copyOf(facts.model().catalog().all(PartKind.SYSTEM));
    if (!missing.what().equals("its system") || systems.size() != 1) {
      return Optional.empty();
    }
    String line = "system " + Words.asName(systems.get(0).name());
    return edits
        .addFirst(missing.origin(), line)
        .map(edit -> new Fix("Add " + line, List.of(edit)));
  }

  private static String says(String where) {
    return where.startsWith(MEMBERS) ? " do not say " : " does not say ";
  }
}
