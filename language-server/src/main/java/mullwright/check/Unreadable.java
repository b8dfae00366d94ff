package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import mullwright.model.Origin;
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
          tell(problem, new Origin(path, at, problem.range()), segments.get(at).text(), found);
        }
      }
    }
  }

  private static void tell(SyntaxProblem problem, Origin at, String text, Findings found) {
    SyntaxWords words = SyntaxWords.of(problem);
    Findings.Draft draft = found.at(at).text().what(words.what()).mend(words.mend());
    for (String replacement : words.replacements()) {
      draft.fix(Fixes.replace(at, replacement));
    }
    SyntaxFixes.of(problem, at, text).forEach(draft::fix);
  }
}
