package mullwright.server.completion;

import mullwright.syntax.TextRange;
import org.eclipse.lsp4j.CompletionItemKind;

/**
 * Something that may be written.
 *
 * @param text as it is written
 * @param detail a few words beside it
 * @param topic what it is about, or null where there is nothing more to tell
 * @param snippet the text with tab stops, for clients that take them, or ""
 * @param behind what stands behind the cursor already of the text, or ""
 * @param closing what is written after the text to close what it stands in, or ""
 * @param takesOut what goes with the word that the offer takes the place of, counted from the
 *     file's start; null if nothing does
 */
public record Offer(
    String text,
    CompletionItemKind kind,
    String detail,
    Topic topic,
    String snippet,
    String behind,
    String closing,
    TextRange takesOut) {
  static Offer of(String text, CompletionItemKind kind, String detail) {
    return of(text, kind, detail, null);
  }

  static Offer of(String text, CompletionItemKind kind, String detail, Topic topic) {
    return new Offer(text, kind, detail, topic, "", "", "", null);
  }

  /** The same with tab stops. */
  Offer as(String withStops) {
    return new Offer(text, kind, detail, topic, withStops, behind, closing, takesOut);
  }

  /** What is written of it: all that does not stand behind the cursor already. */
  public String written() {
    return text.substring(0, text.length() - behind.length()) + closing;
  }

  /** The same with what closes what it stands in. */
  Offer closedBy(String mark) {
    return new Offer(text, kind, detail, topic, snippet, behind, mark, takesOut);
  }

  /** The same where its last word stands behind the cursor already. */
  Offer before(String word) {
    return new Offer(text, kind, detail, topic, snippet, word, closing, takesOut);
  }

  /** The same, taking out what belongs to the word it takes the place of. */
  Offer takingOut(TextRange range) {
    return new Offer(text, kind, detail, topic, snippet, behind, closing, range);
  }
}
