package mullwright.server.action;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Set;
import mullwright.check.Finding;
import org.eclipse.lsp4j.CodeActionKind;

/**
 * Mends every slip of the pen in a file at once; editors may do so whenever a file is saved.
 *
 * <p>Only misspelt words are taken, and of these only where one word is meant: what an anchor
 * needs, or which of two lines goes, is for a person to decide.
 */
@AutoService(ActionSource.class)
public final class FixAll implements ActionSource {
  private static final Set<String> SPELLING =
      Set.of("unreadable", "unknown-name", "unknown-property", "allowance");

  @Override
  public String kind() {
    return CodeActionKind.SourceFixAll;
  }

  @Override
  public List<Action> offers(Selected selected) {
    List<Finding> findings = selected.findings();
    AllMends all = AllMends.of(findings, SPELLING::contains);
    return all.count() == 0
        ? List.of()
        : List.of(
            Action.of(
                "Mend all slips of the pen (" + all.count() + ")",
                () -> all.edits(selected.document())));
  }
}
