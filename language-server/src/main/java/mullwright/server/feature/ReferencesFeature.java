package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import mullwright.model.Reference;
import mullwright.model.Symbol;
import mullwright.server.Client;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.workspace.Cancel;
import mullwright.workspace.Uses;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.ReferenceParams;

/**
 * Finds every place that names the thing under the cursor, in all wall files of the workspace.
 *
 * <p>Answers {@code textDocument/references} (LSP 3.17).
 */
@AutoService(Feature.class)
public final class ReferencesFeature implements Feature {
  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofPlace(
            "textDocument/references",
            ReferenceParams.class,
            (parameters, document, offset, desk) ->
                places(
                    document,
                    offset,
                    parameters.getContext() == null
                        || parameters.getContext().isIncludeDeclaration(),
                    desk.cancel())));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    JsonObject options = new JsonObject();
    options.addProperty("workDoneProgress", true);
    server.add("referencesProvider", options);
  }

  /** What is named under an offset. */
  static Set<Symbol> symbols(Document document, int offset) {
    Set<Symbol> symbols = new LinkedHashSet<>();
    document
        .snapshot()
        .cursor(document.path(), offset)
        .ifPresent(cursor -> cursor.references().forEach(found -> symbols.add(found.symbol())));
    return symbols;
  }

  static List<Location> places(
      Document document, int offset, boolean definitionToo, Cancel cancel) {
    Set<Symbol> symbols = symbols(document, offset);
    List<Location> places = new ArrayList<>();
    if (!symbols.isEmpty()) {
      for (Reference reference : Uses.of(symbols, document.snapshot(), cancel)) {
        if (definitionToo || !reference.definition()) {
          document.view().location(reference.origin()).ifPresent(places::add);
        }
      }
    }
    return places;
  }
}
