package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonObject;
import java.util.List;
import mullwright.format.Formatter;
import mullwright.server.Client;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.syntax.TextRange;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentRangeFormattingParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;

/**
 * Lays out a document, or the lines of a range, in the smallest edits.
 *
 * <p>Answers {@code textDocument/formatting} and {@code textDocument/rangeFormatting} (LSP 3.17).
 * There is one layout, so the client's options (tab size and the like) are not heeded.
 */
@AutoService(Feature.class)
public final class FormattingFeature implements Feature {
  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofDocument(
            "textDocument/formatting",
            DocumentFormattingParams.class,
            DocumentFormattingParams::getTextDocument,
            (parameters, document, desk) -> edits(document, Formatter.edits(document.file()))),
        Route.ofDocument(
            "textDocument/rangeFormatting",
            DocumentRangeFormattingParams.class,
            DocumentRangeFormattingParams::getTextDocument,
            (parameters, document, desk) ->
                edits(
                    document,
                    Formatter.edits(
                        document.file(),
                        range(document, Route.needed(parameters.getRange(), "range"))))));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    server.addProperty("documentFormattingProvider", true);
    server.addProperty("documentRangeFormattingProvider", true);
  }

  private static TextRange range(Document document, Range range) {
    int start = document.offset(range.getStart());
    return new TextRange(start, Math.max(start, document.offset(range.getEnd())));
  }

  static List<TextEdit> edits(Document document, List<mullwright.format.TextEdit> edits) {
    return edits.stream()
        .map(edit -> new TextEdit(document.range(edit.start(), edit.end()), edit.text()))
        .toList();
  }
}
