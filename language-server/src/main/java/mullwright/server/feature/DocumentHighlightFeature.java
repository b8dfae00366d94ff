package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import mullwright.model.Reference;
import mullwright.model.Symbol;
import mullwright.server.Client;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.workspace.Cancel;
import org.eclipse.lsp4j.DocumentHighlight;
import org.eclipse.lsp4j.DocumentHighlightKind;
import org.eclipse.lsp4j.DocumentHighlightParams;

/**
 * Marks every place of the document that names the thing under the cursor.
 *
 * <p>Answers {@code textDocument/documentHighlight} (LSP 3.17); the place that gives the name is
 * told as written to, all others as read.
 */
@AutoService(Feature.class)
public final class DocumentHighlightFeature implements Feature {
  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofPlace(
            "textDocument/documentHighlight",
            DocumentHighlightParams.class,
            (parameters, document, offset, desk) -> marks(document, offset, desk.cancel())));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    server.addProperty("documentHighlightProvider", true);
  }

  static List<DocumentHighlight> marks(Document document, int offset, Cancel cancel) {
    List<DocumentHighlight> marks = new ArrayList<>();
    Set<Symbol> symbols = ReferencesFeature.symbols(document, offset);
    if (symbols.isEmpty()) {
      return marks;
    }
    for (Reference reference :
        document.snapshot().reading(document.path()).orElseThrow().model().references()) {
      cancel.check();
      if (symbols.contains(reference.symbol())) {
        document
            .range(reference.origin())
            .ifPresent(
                range ->
                    marks.add(
                        new DocumentHighlight(
                            range,
                            reference.definition()
                                ? DocumentHighlightKind.Write
                                : DocumentHighlightKind.Read)));
      }
    }
    return marks;
  }
}
