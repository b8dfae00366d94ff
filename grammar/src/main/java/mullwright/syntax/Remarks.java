package mullwright.syntax;

import mullwright.syntax.antlr.WallLexer;

/** The words that open a remark. */
final class Remarks {
  private Remarks() {}

  /** The token type of a remark's word, 0 for any other. */
  static int type(String word) {
    return switch (word) {
      case "note" -> WallLexer.NOTE;
      case "verify" -> WallLexer.VERIFY;
      case "hold" -> WallLexer.HOLD;
      default -> 0;
    };
  }
}
