package mullwright.syntax;

import static mullwright.syntax.antlr.WallLexer.*;

import java.util.ArrayList;
import java.util.List;
import org.antlr.v4.runtime.Token;

/**
 * Cuts text into segments, one top-level statement each, and hands out their raw tokens.
 *
 * <p>A segment ends at the end of a line outside all braces, or before a line that begins in its
 * first column with the word of a top-level block, which also heals an unclosed brace. It goes on
 * where the next line can only belong in the block it holds, which heals a brace that is missing or
 * one too many. Where a segment ends depends on nothing before its start and nothing after the
 * first two words of the next, which is what makes cutting anew after an edit a local matter; only
 * whether a comment ends may hang on text far on.
 */
final class SegmentCutter {
  private final String text;
  private final TableLexer lexer;
  private final List<WallToken> ahead = new ArrayList<>();
  private int start;
  private boolean tooLong;

  SegmentCutter(String text, int start) {
    this.text = text;
    this.start = start;
    this.lexer = new TableLexer(text, start);
  }

  /**
   * A segment before it is read.
   *
   * @param start where it starts in the text
   * @param end where it ends
   * @param tokens comments and line ends among them, places counted from {@code start}
   * @param balanced false if braces were left open
   * @param tooLong true if it has more tokens than are read; those it comes with are not all
   */
  record Cut(int start, int end, List<WallToken> tokens, boolean balanced, boolean tooLong) {}

  boolean hasNext() {
    return start < text.length();
  }

  /** The next segment. */
  Cut next() {
    int depth = 0;
    int parentheses = 0;
    int last = Token.INVALID_TYPE;
    int lineEnd = -1;
    int lineEndsAt = 0;
    BlockKind block = null;
    boolean opened = false;
    tooLong = false;
    for (int i = 0; ; i++) {
      if (i > SyntaxLimits.TOKENS_PER_SEGMENT) {
        tooLong = true;
        int known = lineEnd < 0 ? i : lineEnd;
        ahead.subList(0, known).clear();
        i -= known;
        lineEnd -= lineEnd < 0 ? 0 : known;
      }
      WallToken token = token(i);
      int type = token.getType();
      switch (type) {
        case Token.EOF -> {
          return cut(i, text.length(), depth == 0);
        }
        case LINE_COMMENT, BLOCK_COMMENT, OPEN_COMMENT -> {
          continue;
        }
        case NL -> {
          if (last == Token.INVALID_TYPE) {
            continue;
          }
          if (lineEnd < 0) {
            lineEnd = i + 1;
            lineEndsAt = token.end();
          }
          if (depth == 0 && !continues(last, parentheses, i + 1)) {
            if (block == null || !belongsInside(block, i + 1)) {
              return cut(i + 1, token.end(), true);
            }
            depth = opened ? 0 : 1;
            opened = true;
          }
          continue;
        }
        case LBRACE -> {
          depth++;
          opened = true;
          parentheses = 0;
        }
        case RBRACE -> {
          depth = Math.max(0, depth - 1);
          parentheses = 0;
        }
        case LPAREN -> parentheses++;
        case RPAREN -> parentheses = Math.max(0, parentheses - 1);
        case NAME -> {
          if (depth > 0 && lineEnd >= 0 && opensTopLevelBlock(token, i)) {
            return cut(lineEnd, lineEndsAt, false);
          }
          if (last == Token.INVALID_TYPE) {
            block = Keywords.topLevelBlock(token.getText());
          }
        }
        default -> {
          // an ordinary token
        }
      }
      last = type;
      lineEnd = -1;
    }
  }

  private boolean continues(int last, int parentheses, int following) {
    WallToken next = significant(following);
    if (next.getType() == LBRACE) {
      return last != RBRACE;
    }
    return (parentheses > 0 || LineEnds.continueAfter(last))
        && next.getType() != Token.EOF
        && !Keywords.isStatementWord(BlockKind.FILE, next.getText());
  }

  /**
   * True if the next line can only be meant to stand in the top-level block that the segment began
   * with, though that has no brace, or one too many closed it.
   */
  private boolean belongsInside(BlockKind block, int following) {
    WallToken next = significant(following);
    if (next.getType() != NAME) {
      return next.getType() == RBRACE;
    }
    String word = next.getText();
    return Keywords.isStatementWord(BlockKind.FILE, word)
        ? Keywords.belongsIn(block, word) && !isFirstInLine(next)
        : Keywords.belongsIn(block, word) || !isFirstInLine(next);
  }

  private boolean isFirstInLine(WallToken token) {
    char before = token.start() == 0 ? '\n' : text.charAt(token.start() - 1);
    return before == '\n' || before == '\r';
  }

  private boolean opensTopLevelBlock(WallToken token, int i) {
    if (!isFirstInLine(token)) {
      return false;
    }
    int next = token(i + 1).getType();
    boolean text = next == STRING || next == OPEN_STRING;
    return switch (token.getText()) {
      case "use" -> text;
      case "wall" -> (next == NAME || text) && bracesBeforeLineEnd(i + 2);
      case "project" -> text && bracesBeforeLineEnd(i + 2);
      case "catalog" -> next == LBRACE || text && bracesBeforeLineEnd(i + 2);
      default -> false;
    };
  }

  private boolean bracesBeforeLineEnd(int from) {
    for (int i = from; ; i++) {
      int type = token(i).getType();
      if (type == LBRACE) {
        return true;
      }
      if (type == NL || type == Token.EOF) {
        return false;
      }
    }
  }

  private WallToken significant(int from) {
    for (int i = from; ; i++) {
      WallToken token = token(i);
      switch (token.getType()) {
        case NL, LINE_COMMENT, BLOCK_COMMENT, OPEN_COMMENT -> {}
        default -> {
          return token;
        }
      }
    }
  }

  private WallToken token(int i) {
    while (ahead.size() <= i) {
      ahead.add(lexer.next());
    }
    return ahead.get(i);
  }

  private Cut cut(int count, int end, boolean balanced) {
    List<WallToken> tokens = new ArrayList<>(count + 2);
    for (WallToken token : ahead.subList(0, count)) {
      tokens.add(
          new WallToken(text, start, token.getType(), token.start() - start, token.end() - start));
    }
    Cut cut = new Cut(start, end, tokens, balanced, tooLong);
    ahead.subList(0, count).clear();
    start = end;
    return cut;
  }
}
