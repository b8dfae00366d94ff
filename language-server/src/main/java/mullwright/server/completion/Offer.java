package mullwright.server.completion;

import org.eclipse.lsp4j.CompletionItemKind;

/**
 * Something that may be written.
 *
 * @param text as it is written
 * @param detail a few words beside it
 * @param documentation a sentence or two, or ""
 * @param snippet the text with tab stops, for clients that take them, or ""
 */
public record Offer(
    String text, CompletionItemKind kind, String detail, String documentation, String snippet) {
  static Offer of(String text, CompletionItemKind kind, String detail) {
    return new Offer(text, kind, detail, "", "");
  }
}
