package mullwright.syntax;

import java.util.Arrays;
import org.antlr.v4.runtime.Lexer;
import org.antlr.v4.runtime.Token;

/**
 * Cuts text into raw tokens by the rules of {@code WallLexer.g4}: the longest match is the token,
 * and of equally long ones that of the rule that stands first.
 *
 * <p>The build makes {@link LexerTable} of the lexer that ANTLR generates; that lexer itself would
 * work the same table out from the text at every start, so it is never begun.
 *
 * <p>Places count UTF-16 code units, as an editor's do; a lone surrogate is just another stray
 * character. All letters beyond ASCII are as one: told of each, the table would hold six hundred
 * ranges of characters.
 */
final class TableLexer {
  /** What the grammar says of it holds for all letters beyond ASCII; itself one. */
  static final char OTHER_LETTER = '\u00AA';

  private static final int NO_STATE = 0;
  private static final int START = 1;

  /** Before a comment whose end stands nowhere. */
  private static final int OPEN_COMMENT_START = 2;

  private static final int CLASSES = LexerTable.NEXT.length / LexerTable.ACCEPTS.length;
  private static final int LETTER = classOfRange(OTHER_LETTER);
  private static final int UNKNOWN = -2;

  private final String text;
  private int at;
  private int lastCommentEnd = UNKNOWN;

  /**
   * @param start where the first token is looked for
   */
  TableLexer(String text, int start) {
    this.text = text;
    this.at = start;
  }

  /**
   * The next token, its place counted from the start of the text; at its end, again and again EOF.
   */
  WallToken next() {
    while (at < text.length()) {
      int start = at;
      int type = match();
      if (type != (char) Lexer.SKIP) {
        return new WallToken(text, 0, type, start, at);
      }
    }
    return new WallToken(text, 0, Token.EOF, at, at);
  }

  /** Goes past the longest match and tells what it is; any character at all begins one. */
  private int match() {
    int matched = Token.INVALID_TYPE;
    int state = isOpenComment() ? OPEN_COMMENT_START : START;
    int length = text.length();
    for (int i = at; i < length; i++) {
      state = LexerTable.NEXT[state * CLASSES + classOf(text.charAt(i))];
      if (state == NO_STATE) {
        break;
      }
      int type = LexerTable.ACCEPTS[state];
      if (type != Token.INVALID_TYPE) {
        matched = type;
        at = i + 1;
      }
    }
    return matched;
  }

  /** True before a comment that ends nowhere; only the last end is looked for, and only once. */
  private boolean isOpenComment() {
    if (!text.startsWith("/*", at)) {
      return false;
    }
    if (lastCommentEnd == UNKNOWN) {
      lastCommentEnd = text.lastIndexOf("*/");
    }
    return at + "/*".length() > lastCommentEnd;
  }

  /** Characters of one class are the same to the grammar. */
  static int classOf(char character) {
    if (character < LexerTable.ASCII.length) {
      return LexerTable.ASCII[character];
    }
    return Character.isLetter(character) ? LETTER : classOfRange(character);
  }

  private static int classOfRange(char character) {
    int found = Arrays.binarySearch(LexerTable.FIRSTS, character);
    return LexerTable.CLASSES[found >= 0 ? found : -found - 2];
  }
}
