package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.List;
import java.util.Optional;
import mullwright.model.Origin;
import mullwright.model.Reference;
import mullwright.model.Symbol;
import mullwright.server.Client;
import mullwright.server.Desk;
import mullwright.server.Document;
import mullwright.server.Edits;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.workspace.Rename;
import org.eclipse.lsp4j.PrepareRenameParams;
import org.eclipse.lsp4j.PrepareRenameResult;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.WorkspaceEdit;

/**
 * Renames a thing at every place that names it, in all wall files of the workspace.
 *
 * <p>Answers {@code textDocument/rename} and {@code textDocument/prepareRename} (LSP 3.17). Heeds
 * {@code textDocument.rename.prepareSupport}. A name that a pattern made ({@code L7} of {@code
 * L1..L24}) is refused with the reason, and so is a new name after which anything reads otherwise.
 */
@AutoService(Feature.class)
public final class RenameFeature implements Feature {
  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofPlace(
            "textDocument/prepareRename",
            PrepareRenameParams.class,
            (parameters, document, offset, desk) -> prepare(document, offset, desk)),
        Route.ofPlace(
            "textDocument/rename",
            RenameParams.class,
            (parameters, document, offset, desk) ->
                rename(document, offset, Route.needed(parameters.getNewName(), "newName"), desk)));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    if (client.can("textDocument.rename.prepareSupport")) {
      JsonObject options = new JsonObject();
      options.addProperty("prepareProvider", true);
      options.addProperty("workDoneProgress", true);
      server.add("renameProvider", options);
    } else {
      server.addProperty("renameProvider", true);
    }
  }

  static PrepareRenameResult prepare(Document document, int offset, Desk desk) {
    Optional<Reference> named = named(document, offset);
    if (named.isEmpty()) {
      return null;
    }
    Rename rename = rename(document, named.get().symbol(), desk);
    Range range = document.range(rename.bare(named.get().origin())).orElseThrow();
    return new PrepareRenameResult(range, rename.oldName());
  }

  static WorkspaceEdit rename(Document document, int offset, String newName, Desk desk) {
    Optional<Reference> named = named(document, offset);
    if (named.isEmpty()) {
      throw Route.refused("There is no name here.");
    }
    Rename rename = rename(document, named.get().symbol(), desk);
    Rename.Outcome outcome = rename.to(newName, desk.cancel());
    if (outcome.refusal().isPresent()) {
      throw Route.refused(outcome.refusal().get());
    }
    Edits edits = new Edits(document.view());
    for (Origin place : outcome.places()) {
      edits.replace(place, outcome.text());
    }
    return edits.toWorkspaceEdit(desk.client());
  }

  private static Rename rename(Document document, Symbol symbol, Desk desk) {
    Rename rename = Rename.of(symbol, document.snapshot(), desk.cancel());
    if (rename.refusal().isPresent()) {
      throw Route.refused(rename.refusal().get());
    }
    return rename;
  }

  /** The one thing named under the offset; where two names touch, the one that begins there. */
  private static Optional<Reference> named(Document document, int offset) {
    List<Reference> references = document.cursor(offset).references();
    return references.isEmpty()
        ? Optional.empty()
        : Optional.of(references.get(references.size() - 1));
  }
}
