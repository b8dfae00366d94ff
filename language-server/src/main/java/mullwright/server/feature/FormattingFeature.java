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
import org.eclipse.lsp4j.DocumentRangesFormattingParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;

/**
 * Lays out a document, or the lines of a range, in the smallest edits.
 *
 * <p>Answers {@code textDocument/formatting}, {@code textDocument/rangeFormatting} (LSP 3.17) and
 * {@code textDocument/rangesFormatting} (LSP 3.18, heeds {@code
 * textDocument.rangeFormatting.rangesSupport}). There is one layout, so the client's options (tab
 * size and the like) are not heeded.
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
                within(document, List.of(Route.needed(parameters.getRange(), "range")))),
        Route.ofDocument(
            "textDocument/rangesFormatting",
            DocumentRangesFormattingParams.class,
            DocumentRangesFormattingParams::getTextDocument,
            (parameters, document, desk) ->
                within(document, Route.needed(parameters.getRanges(), "ranges"))));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    server.addProperty("documentFormattingProvider", true);
    if (client.can("textDocument.rangeFormatting.rangesSupport")) {
      JsonObject options = new JsonObject();
      options.addProperty("rangesSupport", true);
      server.add("documentRangeFormattingProvider", options);
    } else {
      server.addProperty("documentRangeFormattingProvider", true);
    }
  }

  /** The edits on lines of any of the ranges, each once. */
  private static List<TextEdit> within(Document document, List<Range> ranges) {
    List<TextRange> touched = ranges.stream().map(range -> range(document, range)).toList();
    return edits(document, Formatter.edits(document.file(), touched));
  }

  private static TextRange range(Document document, Range range) {
    int start = document.offset(Route.needed(range, "ranges").getStart());
    return new TextRange(start, Math.max(start, document.offset(range.getEnd())));
  }

  static List<TextEdit> edits(Document document, List<mullwright.format.TextEdit> edits) {
    return edits.stream()
        .map(edit -> new TextEdit(document.range(edit.start(), edit.end()), edit.text()))
        .toList();
  }
}
