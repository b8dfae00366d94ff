package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import mullwright.model.Origin;
import mullwright.model.Role;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.Segment;
import mullwright.syntax.SyntaxProblem;

/** Text that cannot be read as a statement: one mistake, one finding. */
@AutoService(Rule.class)
public final class Unreadable implements TextRule {
  @Override
  public About about() {
    return About.of(Group.TEXT, Severity.ERROR);
  }

  @Override
  public void check(TextFacts facts, Findings found) {
    List<String> read = new ArrayList<>(facts.model().uses());
    read.add(0, facts.model().file());
    for (String path : read) {
      ParsedFile file = facts.files().get(path);
      List<Segment> segments = file == null ? List.of() : file.segments();
      for (int at = 0; at < segments.size(); at++) {
        for (SyntaxProblem problem : segments.get(at).problems()) {
          Origin origin = new Origin(path, at, problem.range());
          String text = segments.get(at).text();
          Optional<SplitName> split = SplitName.of(problem, text, facts.model().catalog());
          if (split.isPresent()) {
            split.get().tell(origin, found);
          } else {
            tell(problem, origin, text, facts, found);
          }
        }
      }
    }
  }

  /** True of a word that may lack a comma, and is the name of a part or a role: none of a place. */
  private static boolean isPart(SyntaxProblem problem, TextFacts facts) {
    return problem instanceof SyntaxProblem.Garbled slip
        && slip.how() == SyntaxProblem.Garbled.How.WORD_OR_COMMA_LEFT_OUT
        && (Arrays.stream(Role.values()).anyMatch(role -> role.spelling().equals(slip.found()))
            || facts.model().catalog().parts().values().stream()
                .anyMatch(parts -> parts.containsKey(slip.found())));
  }

  private static void tell(
      SyntaxProblem problem, Origin at, String text, TextFacts facts, Findings found) {
    SyntaxWords words = SyntaxWords.of(problem);
    Findings.Draft draft = found.at(at).text().what(words.what()).mend(words.mend());
    for (String replacement : words.replacements()) {
      draft.fix(Fixes.replace(at, replacement));
    }
    SyntaxFixes.of(problem, at, text).stream()
        .filter(fix -> !(isPart(problem, facts) && fix.title().startsWith("Put a comma")))
        .forEach(draft::fix);
  }
}
