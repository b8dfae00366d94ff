package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import mullwright.syntax.ParsedFile;

/** A comment that allows a finding without a reason, by a name no rule has, or for nothing. */
@AutoService(Rule.class)
public final class Allowance implements TextRule {
  /** Its name, for what {@link Allowances} finds. */
  static final String NAME = "allowance";

  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.WARNING);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    Map<String, ParsedFile> files = new TreeMap<>(facts.files());
    files
        .keySet()
        .removeIf(
            path -> !path.equals(facts.model().file()) && !facts.model().uses().contains(path));
    Optional<Rules> rules = Optional.empty();
    for (Allowances.Allow allow : Allowances.in(files)) {
      if (allow.reason().isEmpty()) {
        found
            .at(allow.origin())
            .text()
            .what("The comment allows a finding and gives no reason, so it allows nothing.")
            .mend("Say why: // allow " + String.join(", ", allow.rules()) + ": the reason.");
      }
      for (String name : allow.rules()) {
        rules = rules.isPresent() ? rules : Optional.of(Rules.find());
        if (rules.get().named(name).isEmpty()) {
          Findings.Draft draft =
              found
                  .at(allow.origin())
                  .text()
                  .what("No rule is called " + Words.quoted(name) + ".")
                  .mend("Take the name from the finding; “mullwright rules” lists all.");
          List<String> names = rules.get().all().stream().map(Rule::name).toList();
          String comment = facts.textAt(allow.origin()).orElse("");
          if (comment.contains(name)) {
            Words.near(name, names)
                .forEach(
                    near ->
                        draft.fix(
                            new Fix(
                                "Write " + near,
                                List.of(
                                    new Fix.Edit(allow.origin(), comment.replace(name, near))))));
          }
        }
      }
    }
  }
}
