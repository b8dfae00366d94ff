package mullwright.syntax;

import static mullwright.syntax.antlr.WallLexer.*;

/** After which tokens a statement goes on in the next line. */
final class LineEnds {
  private LineEnds() {}

  /** True after a comma, an operator or {@code ..}. */
  static boolean continueAfter(int type) {
    return switch (type) {
      case COMMA, EACH, PLUS, MINUS, STAR, DIVIDE, ASSIGN, RANGE -> true;
      default -> false;
    };
  }
}
