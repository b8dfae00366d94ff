package mullwright.server.action;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import mullwright.check.Finding;
import mullwright.check.Fix;
import mullwright.check.FoldedFinding;
import mullwright.server.Diagnostics;
import mullwright.server.Document;
import mullwright.server.Edits;
import mullwright.workspace.FilePlace;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.Diagnostic;

/**
 * The mends of the findings at a place, or of those on the cursor's line where it touches none;
 * and, where a rule found more of the kind in the file, one action that mends them all.
 */
@AutoService(ActionSource.class)
public final class Mends implements ActionSource {
  @Override
  public String kind() {
    return CodeActionKind.QuickFix;
  }

  @Override
  public List<Action> offers(Selected selected) {
    List<FoldedFinding> folded = FoldedFinding.fold(selected.findings());
    List<Action> there = offers(folded, selected::touches, selected);
    // editors that show a line's findings ask for their mends wherever on it the cursor is
    return there.isEmpty() ? offers(folded, selected::isOnLineOf, selected) : there;
  }

  private static List<Action> offers(
      List<FoldedFinding> all, Predicate<FilePlace> near, Selected selected) {
    List<Action> offers = new ArrayList<>();
    Map<String, Integer> rules = new LinkedHashMap<>();
    List<Finding> findings = selected.findings();
    Document document = selected.document();
    for (FoldedFinding folded : all) {
      Optional<FilePlace> place = document.snapshot().place(folded.shown().origin());
      if (place.filter(near).isEmpty()) {
        continue;
      }
      List<Fix> fixes = folded.fixes();
      for (Fix fix : fixes) {
        if (AllMends.stands(fix, document)) {
          offers.add(mend(fix, folded, selected, fixes.size() == 1));
        }
      }
      if (!fixes.isEmpty()) {
        rules.put(folded.shown().rule(), 0);
      }
    }
    for (String rule : rules.keySet()) {
      AllMends kind = AllMends.of(findings, rule::equals);
      if (kind.count() > 1) {
        offers.add(
            Action.of(
                "Mend all " + kind.count() + " of “" + rule + "” in this file",
                () -> kind.edits(document)));
      }
    }
    return offers;
  }

  private static Action mend(Fix fix, FoldedFinding folded, Selected selected, boolean preferred) {
    Document document = selected.document();
    List<Diagnostic> mended =
        Diagnostics.of(folded, document, selected.desk().client()).stream().toList();
    return Action.mending(
        fix.title(),
        preferred,
        mended,
        () -> {
          Edits edits = new Edits(document.view());
          fix.edits().forEach(edit -> edits.replace(edit.origin(), edit.text()));
          return edits;
        });
  }
}
