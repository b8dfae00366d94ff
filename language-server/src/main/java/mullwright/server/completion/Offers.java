package mullwright.server.completion;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import mullwright.syntax.TextRange;
import mullwright.workspace.Cursor;
import org.eclipse.lsp4j.CompletionItemKind;

/**
 * What may be written at a place, best first.
 *
 * @param range what is being written there, counted from the file's start; an offer takes its place
 * @param word the same with the rest of the word behind the cursor
 */
public record Offers(TextRange range, TextRange word, List<Offer> all) {
  /** What {@code units} takes. */
  static final List<String> UNITS = List.of("inches", "feet", "millimetres", "metres");

  /** What {@code opening} takes. */
  static final List<String> OPENINGS = List.of("door", "void", "louvre", "vent");

  /** Units that stand right at their number: after a blank they are none. */
  private static final Set<String> MARKS = Set.of("'", "\"");

  /** The offers at a cursor. */
  public static Offers at(Cursor cursor) {
    LineContext line = LineContext.of(cursor);
    Set<Offer> offers = new LinkedHashSet<>();
    if (!line.closed()) {
      new Gathering(cursor, line, new Names(cursor), offers).gather();
    }
    offers.removeIf(
        offer ->
            line.numberEnds() ? !isUnit(offer) : isUnit(offer) && MARKS.contains(offer.text()));
    int start = line.prefix().start();
    TextRange word = new TextRange(start, Math.max(line.prefix().end(), line.wordEnd()));
    List<Offer> all = List.copyOf(offers);
    if (word.length() > 0 && !line.inString()) {
      String replaced = cursor.file().text().substring(word.start(), word.end());
      all =
          Following.of(cursor, word.end())
              .map(it -> it.fit(replaced, List.copyOf(offers)))
              .orElse(all);
    }
    return new Offers(line.prefix(), word, all);
  }

  private static boolean isUnit(Offer offer) {
    return offer.kind() == CompletionItemKind.Unit;
  }
}
