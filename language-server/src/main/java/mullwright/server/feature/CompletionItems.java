package mullwright.server.feature;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import mullwright.server.Client;
import mullwright.server.Document;
import mullwright.server.completion.Offer;
import mullwright.server.completion.Offers;
import mullwright.syntax.TextRange;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionItemDefaults;
import org.eclipse.lsp4j.CompletionItemLabelDetails;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.InsertReplaceEdit;
import org.eclipse.lsp4j.InsertReplaceRange;
import org.eclipse.lsp4j.InsertTextFormat;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;

/** Writes offers as the protocol's items, in the form the client can take. */
final class CompletionItems {
  private static final String ITEM = "textDocument.completion.completionItem.";
  private static final String DEFAULTS = "textDocument.completion.completionList.itemDefaults";

  private final Document document;
  private final boolean snippets;
  private final boolean replaces;
  private final boolean details;
  private final boolean rangeOnce;
  private final KnownKinds kinds;

  CompletionItems(Document document, Client client) {
    this.document = document;
    this.snippets = client.can(ITEM + "snippetSupport");
    this.replaces = client.can(ITEM + "insertReplaceSupport");
    this.details = client.can(ITEM + "labelDetailsSupport");
    this.rangeOnce = client.words(DEFAULTS).contains("editRange");
    this.kinds = KnownKinds.of(client, "textDocument.completion.completionItemKind.valueSet");
  }

  /** The items at an offset; where the client takes it, what they share is told once. */
  CompletionList at(int offset) {
    Offers offers = Offers.at(document.cursor(offset));
    Range insert = range(offers.range());
    Range replace = range(offers.word());
    CompletionList list = new CompletionList(false, new ArrayList<>());
    if (rangeOnce) {
      CompletionItemDefaults defaults = new CompletionItemDefaults();
      defaults.setEditRange(
          replaces
              ? Either.forRight(new InsertReplaceRange(insert, replace))
              : Either.forLeft(insert));
      list.setItemDefaults(defaults);
    }
    for (Offer offer : offers.all()) {
      list.getItems().add(item(offer, insert, replace, list.getItems()));
    }
    return list;
  }

  private Range range(TextRange range) {
    return document.range(range.start(), range.end());
  }

  private CompletionItem item(
      Offer offer, Range insert, Range replace, List<CompletionItem> before) {
    CompletionItem item = new CompletionItem(offer.text());
    item.setKind(kinds.offer(offer.kind()));
    if (details) {
      CompletionItemLabelDetails beside = new CompletionItemLabelDetails();
      beside.setDescription(offer.detail());
      item.setLabelDetails(beside);
    } else {
      item.setDetail(offer.detail());
    }
    boolean snippet = snippets && !offer.snippet().isEmpty();
    String text = snippet ? offer.snippet() : offer.written();
    if (!rangeOnce) {
      item.setTextEdit(
          replaces
              ? Either.forRight(new InsertReplaceEdit(text, insert, replace))
              : Either.forLeft(new TextEdit(insert, text)));
    } else if (snippet || !text.equals(offer.text())) {
      item.setTextEditText(text);
    }
    if (offer.takesOut() != null) {
      item.setAdditionalTextEdits(List.of(new TextEdit(range(offer.takesOut()), "")));
    }
    if (snippet) {
      item.setInsertTextFormat(InsertTextFormat.Snippet);
    }
    item.setSortText(String.format(Locale.ROOT, "%04d", before.size()));
    if (offer.topic() != null) {
      item.setData(offer.topic().json(document.address()));
    }
    return item;
  }
}
