package mullwright.server.completion;

import java.util.List;
import java.util.Optional;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.TextRange;
import mullwright.syntax.Token;
import mullwright.syntax.TokenKind;
import mullwright.workspace.Cursor;

/**
 * The word after the one at the cursor, on the same line: an offer must not write it again.
 *
 * @param word as spelled
 * @param range from the end of the word at the cursor to its own, counted from the file's start
 */
record Following(String word, TextRange range) {
  /**
   * The word that follows.
   *
   * @param end where the word at the cursor ends, counted from the file's start
   */
  static Optional<Following> of(Cursor cursor, int end) {
    ParsedFile file = cursor.file();
    String text = file.text();
    int base = file.segmentStart(cursor.segment());
    for (Token token : file.tokens(cursor.segment())) {
      int start = base + token.range().start();
      boolean comment =
          token.kind() == TokenKind.COMMENT || token.kind() == TokenKind.DOCUMENTATION;
      if (start >= end && !comment) {
        int last = base + token.range().end();
        return text.substring(end, start).indexOf('\n') >= 0
            ? Optional.empty()
            : Optional.of(new Following(text.substring(start, last), new TextRange(end, last)));
      }
    }
    return Optional.empty();
  }

  /** Offers that take the place of a word before it: none writes anew what stands there. */
  List<Offer> fit(String replaced, List<Offer> offers) {
    boolean two =
        LineContext.clause(replaced)
            .filter(clause -> clause.spelling().equals(replaced + " " + word))
            .isPresent();
    return offers.stream().map(offer -> two ? fit(offer) : offer).map(o -> o.as("")).toList();
  }

  /** Of a clause of two words the second stays if it is the same, and else goes with the first. */
  private Offer fit(Offer offer) {
    String second = " " + word;
    return offer.text().endsWith(second) ? offer.before(second) : offer.takingOut(range);
  }
}
