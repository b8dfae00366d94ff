package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import mullwright.server.Client;
import mullwright.server.Document;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.server.completion.Offer;
import mullwright.server.completion.Offers;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.InsertTextFormat;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/**
 * Offers what may be written next: statements of the block, clauses not yet given, names of the
 * kind that is wanted, units after a number, paths of files.
 *
 * <p>Answers {@code textDocument/completion} (LSP 3.17). Heeds {@code
 * textDocument.completion.completionItem.snippetSupport}. Each item brings its own range, since
 * names hold {@code -} and {@code .}, at which editors end a word.
 */
@AutoService(Feature.class)
public final class CompletionFeature implements Feature {
  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofPlace(
            "textDocument/completion",
            CompletionParams.class,
            (parameters, document, offset, desk) ->
                items(
                    document,
                    offset,
                    desk.client().can("textDocument.completion.completionItem.snippetSupport"))));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    JsonArray triggers = new JsonArray();
    triggers.add(".");
    triggers.add("\"");
    JsonObject options = new JsonObject();
    options.add("triggerCharacters", triggers);
    server.add("completionProvider", options);
  }

  static List<CompletionItem> items(Document document, int offset, boolean snippets) {
    Offers offers = Offers.at(document.snapshot().cursor(document.path(), offset).orElseThrow());
    Range range = document.range(offers.range().start(), offers.range().end());
    List<CompletionItem> items = new ArrayList<>();
    for (Offer offer : offers.all()) {
      CompletionItem item = new CompletionItem(offer.text());
      item.setKind(offer.kind());
      item.setDetail(offer.detail());
      if (!offer.documentation().isEmpty()) {
        item.setDocumentation(offer.documentation());
      }
      boolean snippet = snippets && !offer.snippet().isEmpty();
      item.setTextEdit(
          Either.forLeft(new TextEdit(range, snippet ? offer.snippet() : offer.text())));
      if (snippet) {
        item.setInsertTextFormat(InsertTextFormat.Snippet);
      }
      item.setSortText(String.format(Locale.ROOT, "%04d", items.size()));
      items.add(item);
    }
    return items;
  }
}
