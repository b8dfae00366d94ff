package mullwright.server.completion;

import org.eclipse.lsp4j.CompletionItemKind;

/**
 * Something that may be written.
 *
 * @param text as it is written
 * @param detail a few words beside it
 * @param topic what it is about, or null where there is nothing more to tell
 * @param snippet the text with tab stops, for clients that take them, or ""
 */
public record Offer(
    String text, CompletionItemKind kind, String detail, Topic topic, String snippet) {
  static Offer of(String text, CompletionItemKind kind, String detail) {
    return new Offer(text, kind, detail, null, "");
  }

  static Offer of(String text, CompletionItemKind kind, String detail, Topic topic) {
    return new Offer(text, kind, detail, topic, "");
  }

  /** The same with tab stops. */
  Offer as(String withStops) {
    return new Offer(text, kind, detail, topic, withStops);
  }
}
