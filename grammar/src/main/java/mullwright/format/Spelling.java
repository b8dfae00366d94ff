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
      case LENGTH -> Literals.spelling(text);
      case SIGN, OPERATOR -> text.replace('\u2212', '-');
      case STRING -> "\"" + text.substring(1, text.length() - 1) + "\"";
      case COMMENT, DOCUMENTATION -> text.stripTrailing();
      default -> text;
    };
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
