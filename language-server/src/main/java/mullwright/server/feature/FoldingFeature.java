package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.List;
import mullwright.server.Client;
import mullwright.server.Feature;
import mullwright.server.Route;
import org.eclipse.lsp4j.FoldingRangeRequestParams;

/**
 * What may be folded: blocks and braces of clauses, runs of comment lines, runs of {@code use}.
 *
 * <p>Answers {@code textDocument/foldingRange} (LSP 3.17). Heeds, below {@code
 * textDocument.foldingRange}, {@code lineFoldingOnly}: without it blocks fold from brace to brace;
 * {@code rangeLimit}: outer folds stay; {@code foldingRange.collapsedText}.
 */
@AutoService(Feature.class)
public final class FoldingFeature implements Feature {
  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofDocument(
            "textDocument/foldingRange",
            FoldingRangeRequestParams.class,
            FoldingRangeRequestParams::getTextDocument,
            (parameters, document, desk) -> new Folds(document, desk.client()).all(desk.cancel())));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    server.addProperty("foldingRangeProvider", true);
  }
}
