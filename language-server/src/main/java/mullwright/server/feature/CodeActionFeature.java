package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.check.Finding;
import mullwright.check.Fix;
import mullwright.check.FoldedFinding;
import mullwright.server.Client;
import mullwright.server.Desk;
import mullwright.server.Diagnostics;
import mullwright.server.Document;
import mullwright.server.Edits;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.workspace.FilePlace;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.WorkspaceEdit;

/**
 * Mends of the findings that stand where the cursor or the selection is.
 *
 * <p>Answers {@code textDocument/codeAction} (LSP 3.17). Heeds {@code
 * textDocument.codeAction.codeActionLiteralSupport}, without which nothing is offered, and {@code
 * textDocument.codeAction.isPreferredSupport}.
 */
@AutoService(Feature.class)
public final class CodeActionFeature implements Feature {
  private static final String LITERALS = "textDocument.codeAction.codeActionLiteralSupport";

  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofDocument(
            "textDocument/codeAction",
            CodeActionParams.class,
            CodeActionParams::getTextDocument,
            (parameters, document, desk) -> {
              Range range = Route.needed(parameters.getRange(), "range");
              boolean wanted =
                  desk.client().has(LITERALS)
                      && wants(
                          parameters.getContext() == null
                              ? null
                              : parameters.getContext().getOnly());
              return wanted
                  ? mends(
                      document,
                      document.offset(range.getStart()),
                      document.offset(range.getEnd()),
                      desk)
                  : List.<Command>of();
            }));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    if (client.has(LITERALS)) {
      JsonArray kinds = new JsonArray();
      kinds.add(CodeActionKind.QuickFix);
      JsonObject options = new JsonObject();
      options.add("codeActionKinds", kinds);
      server.add("codeActionProvider", options);
    } else {
      server.addProperty("codeActionProvider", false);
    }
  }

  private static boolean wants(List<String> only) {
    return only == null
        || only.isEmpty()
        || only.contains(CodeActionKind.QuickFix)
        || only.contains(CodeActionKind.Empty);
  }

  static List<CodeAction> mends(Document document, int start, int end, Desk desk) {
    List<CodeAction> mends = new ArrayList<>();
    List<Finding> findings =
        document
            .snapshot()
            .findings(Set.of(document.path()), desk.cancel())
            .getOrDefault(document.path(), List.of());
    for (FoldedFinding folded : FoldedFinding.fold(findings)) {
      Optional<FilePlace> place = document.snapshot().place(folded.shown().origin());
      if (place.isEmpty() || place.get().end() < start || place.get().start() > end) {
        continue;
      }
      List<Fix> fixes = folded.fixes();
      for (Fix fix : fixes) {
        action(fix, folded, document, fixes.size() == 1, desk.client()).ifPresent(mends::add);
      }
    }
    return mends;
  }

  private static Optional<CodeAction> action(
      Fix fix, FoldedFinding finding, Document document, boolean preferred, Client client) {
    Edits edits = new Edits(document.view());
    for (Fix.Edit edit : fix.edits()) {
      if (!edits.replace(edit.origin(), edit.text())) {
        return Optional.empty();
      }
    }
    WorkspaceEdit workspaceEdit = edits.toWorkspaceEdit(client);
    CodeAction action = new CodeAction(fix.title());
    action.setKind(CodeActionKind.QuickFix);
    action.setEdit(workspaceEdit);
    document
        .range(finding.shown().origin())
        .ifPresent(
            range ->
                action.setDiagnostics(
                    List.of(Diagnostics.of(finding, range, document.view(), false))));
    if (preferred && client.can("textDocument.codeAction.isPreferredSupport")) {
      action.setIsPreferred(true);
    }
    return Optional.of(action);
  }
}
