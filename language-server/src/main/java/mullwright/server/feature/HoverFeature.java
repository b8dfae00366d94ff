package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.List;
import mullwright.server.Client;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.server.hover.Pages;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;

/**
 * Tells what the thing under the pointer is and what it comes to: pieces with lengths and marks,
 * lites with sizes and mass, places, parts, the meaning of words, numbers in both systems of units.
 *
 * <p>Answers {@code textDocument/hover} (LSP 3.17). Heeds {@code textDocument.hover.contentFormat}:
 * plain text for a client that does not name Markdown.
 */
@AutoService(Feature.class)
public final class HoverFeature implements Feature {
  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofPlace(
            "textDocument/hover",
            HoverParams.class,
            (parameters, document, offset, desk) ->
                hover(
                    document,
                    offset,
                    desk.client()
                        .words("textDocument.hover.contentFormat")
                        .contains(MarkupKind.MARKDOWN))));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    server.addProperty("hoverProvider", true);
  }

  static Hover hover(Document document, int offset, boolean markdown) {
    return Pages.at(document, offset)
        .map(
            shown ->
                new Hover(
                    new MarkupContent(
                        markdown ? MarkupKind.MARKDOWN : MarkupKind.PLAINTEXT,
                        markdown ? shown.page().markdown() : shown.page().plain()),
                    document.range(shown.range().start(), shown.range().end())))
        .orElse(null);
  }
}
