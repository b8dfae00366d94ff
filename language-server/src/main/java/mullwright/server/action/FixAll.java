package mullwright.server.action;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import mullwright.check.Finding;
import mullwright.check.Group;
import mullwright.check.Rules;
import org.eclipse.lsp4j.CodeActionKind;

/**
 * Mends every slip of the pen in a file at once; editors may do so whenever a file is saved.
 *
 * <p>Only rules about the text are taken: what an anchor needs is for a person to decide.
 */
@AutoService(ActionSource.class)
public final class FixAll implements ActionSource {
  @Override
  public String kind() {
    return CodeActionKind.SourceFixAll;
  }

  @Override
  public List<Action> offers(Selected selected) {
    List<Finding> findings =
        selected.findings().stream().filter(finding -> finding.fixes().size() == 1).toList();
    if (findings.isEmpty()) {
      return List.of();
    }
    Set<String> ofText =
        Rules.find().all().stream()
            .filter(rule -> rule.about().group() == Group.TEXT)
            .map(rule -> rule.name())
            .collect(Collectors.toSet());
    AllMends all = AllMends.of(findings, ofText::contains);
    return all.count() == 0
        ? List.of()
        : List.of(
            Action.of(
                "Mend all slips of the pen (" + all.count() + ")",
                () -> all.edits(selected.document())));
  }
}
