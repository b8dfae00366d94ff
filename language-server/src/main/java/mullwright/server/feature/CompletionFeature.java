package mullwright.server.feature;

import com.google.auto.service.AutoService;
import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import java.util.List;
import java.util.Optional;
import mullwright.server.Client;
import mullwright.server.Desk;
import mullwright.server.Feature;
import mullwright.server.Route;
import mullwright.server.completion.Topic;
import mullwright.server.completion.TopicPages;
import mullwright.server.hover.Page;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.MarkupContent;
import org.eclipse.lsp4j.MarkupKind;

/**
 * Offers what may be written next: statements of the block, clauses not yet given, names of the
 * kind that is wanted, units after a number, paths of files.
 *
 * <p>Answers {@code textDocument/completion} and, with the page of an offer, {@code
 * completionItem/resolve} (LSP 3.17). Heeds, below {@code textDocument.completion}, {@code
 * completionItemKind}, {@code completionItem.snippetSupport}, {@code
 * completionItem.insertReplaceSupport}, {@code completionItem.labelDetailsSupport}, {@code
 * completionItem.documentationFormat} and {@code completionList.itemDefaults}. Items bring their
 * own range, since names hold {@code -} and {@code .}, at which editors end a word.
 */
@AutoService(Feature.class)
public final class CompletionFeature implements Feature {
  private static final String FORMATS =
      "textDocument.completion.completionItem.documentationFormat";

  @Override
  public List<Route<?>> routes() {
    return List.of(
        Route.ofPlace(
            "textDocument/completion",
            CompletionParams.class,
            (parameters, document, offset, desk) ->
                new CompletionItems(document, desk.client()).at(offset)),
        new Route<>("completionItem/resolve", CompletionItem.class, CompletionFeature::resolved));
  }

  @Override
  public void advertise(Client client, JsonObject server) {
    JsonArray triggers = new JsonArray();
    triggers.add(".");
    triggers.add("\"");
    JsonObject options = new JsonObject();
    options.add("triggerCharacters", triggers);
    options.addProperty("resolveProvider", true);
    if (client.can("textDocument.completion.completionItem.labelDetailsSupport")) {
      JsonObject item = new JsonObject();
      item.addProperty("labelDetailsSupport", true);
      options.add("completionItem", item);
    }
    server.add("completionProvider", options);
  }

  /** The item with the page of what it offers; one that has none as it is. */
  static CompletionItem resolved(CompletionItem item, Desk desk) {
    Optional<Page> page =
        Topic.read(item.getData())
            .flatMap(
                asked ->
                    desk.document(asked.file())
                        .flatMap(document -> new TopicPages(document).of(asked.topic())));
    page.ifPresent(
        shown -> {
          boolean markdown = desk.client().words(FORMATS).contains(MarkupKind.MARKDOWN);
          item.setDocumentation(
              new MarkupContent(
                  markdown ? MarkupKind.MARKDOWN : MarkupKind.PLAINTEXT,
                  markdown ? shown.markdown() : shown.plain()));
        });
    return item;
  }
}
