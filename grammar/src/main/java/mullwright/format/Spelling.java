package mullwright.format;

import mullwright.syntax.Literals;
import mullwright.syntax.Token;
import mullwright.syntax.TokenKind;

/** How each token is written and what stands between two of them. */
final class Spelling {
  private Spelling() {}

  /** A token's one spelling. */
  static String of(Token token, String text) {
    return switch (token.kind()) {
      case LENGTH, NUMBER -> Literals.spelling(text);
      case SIGN, OPERATOR -> text.replace('\u2212', '-');
      case STRING, NAME, REFERENCE -> quoted(text);
      case COMMENT, DOCUMENTATION -> withoutTrailingBlanks(text);
      default -> text;
    };
  }

  /** In straight quotes; text without quotes or without its last stays as it is. */
  private static String quoted(String text) {
    int last = text.length() - 1;
    boolean closed = last > 0 && isQuote(text.charAt(0)) && isQuote(text.charAt(last));
    return closed ? "\"" + text.substring(1, last) + "\"" : text;
  }

  private static boolean isQuote(char c) {
    return c == '"' || c == '\u201c' || c == '\u201d';
  }

  private static String withoutTrailingBlanks(String comment) {
    int end = comment.length();
    while (end > 0 && (comment.charAt(end - 1) == ' ' || comment.charAt(end - 1) == '\t')) {
      end--;
    }
    return comment.substring(0, end);
  }

  /** True if a space stands between the two. */
  static boolean spaceBetween(Token before, String beforeText, Token after, String afterText) {
    TokenKind left = before.kind();
    TokenKind right = after.kind();
    if (left == TokenKind.RANGE || right == TokenKind.RANGE) {
      return false;
    }
    if (right == TokenKind.COMMA || left == TokenKind.SIGN) {
      return false;
    }
    if (left == TokenKind.PARENTHESIS && beforeText.equals("(")
        || right == TokenKind.PARENTHESIS && afterText.equals(")")) {
      return false;
    }
    boolean markedUnit = afterText.equals("\u00b0") || afterText.equals("%");
    return !(right == TokenKind.UNIT && markedUnit);
  }
}
