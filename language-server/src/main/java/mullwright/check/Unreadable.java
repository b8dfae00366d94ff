package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;
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
    for (Map.Entry<String, ParsedFile> file : facts.files().entrySet()) {
      List<Segment> segments = file.getValue().segments();
      for (int at = 0; at < segments.size(); at++) {
        for (SyntaxProblem problem : segments.get(at).problems()) {
          tell(problem, new Origin(file.getKey(), at, problem.range()), found);
        }
      }
    }
  }

  private static void tell(SyntaxProblem problem, Origin at, Findings found) {
    SyntaxWords words = SyntaxWords.of(problem);
    Findings.Draft draft = found.at(at).text().what(words.what()).mend(words.mend());
    for (String replacement : words.replacements()) {
      draft.fix(Fixes.replace(at, replacement));
    }
  }
}
