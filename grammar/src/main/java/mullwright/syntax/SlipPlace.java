package mullwright.syntax;

import static mullwright.syntax.antlr.WallLexer.*;

import java.util.EnumSet;
import java.util.Set;
import mullwright.syntax.ClauseWord.Form;
import org.antlr.v4.runtime.TokenStream;

/** Where a line cannot be read on: the words on both sides of the place, and what fits there. */
abstract class SlipPlace {
  /** Units of lengths; a value with any other is no length. */
  private static final Set<String> LENGTHS = Set.of("mm", "cm", "m");

  final TokenStream tokens;
  final StatementKind kind;
  final WallToken found;
  final WallToken before;

  /** Clauses that stand on the line already. */
  final Set<ClauseWord> said = EnumSet.noneOf(ClauseWord.class);

  SlipPlace(TokenStream tokens, StatementKind kind) {
    this.tokens = tokens;
    this.kind = kind;
    this.found = (WallToken) tokens.LT(1);
    this.before = (WallToken) tokens.LT(-1);
    for (int at = tokens.index(); at >= 0 && !endsLine(tokens.get(at).getType()); at--) {
      note(at);
    }
    for (int at = tokens.index() + 1; !endsLine(tokens.get(at).getType()); at++) {
      note(at);
    }
  }

  private void note(int at) {
    ClauseWord clause = Keywords.clauseOf(tokens.get(at).getType());
    if (clause != null) {
      said.add(clause);
    }
  }

  static boolean endsLine(int type) {
    return type == NL || type == LBRACE || type == RBRACE || type == EOF;
  }

  static boolean beginsValue(int type) {
    return switch (type) {
      case NUMBER, LENGTH, COUNT, REFERENCE, LPAREN, SIGN -> true;
      default -> false;
    };
  }

  final boolean unit() {
    return before.getType() == UNIT;
  }

  final String inside() {
    return kind.spelling();
  }

  /** True if what stands here may be what that clause takes. */
  final boolean fits(ClauseWord clause) {
    boolean value = beginsValue(found.getType());
    int next = tokens.LA(2);
    String after = endsLine(next) ? "" : tokens.LT(2).getText();
    Form form = clause.form();
    if (value && (next == EACH || after.equals("equal"))) {
      return form == Form.SPACED;
    }
    if (value && after.equals("x")) {
      return form == Form.COUNTED;
    }
    boolean extent = ahead(TO);
    if (extent && kind.clauses().contains(ClauseWord.FROM)) {
      return form == Form.EXTENT;
    }
    if (value && (ahead(ABOVE) || ahead(BELOW) || ahead(RIGHT_OF) || ahead(LEFT_OF))) {
      return form == Form.AT;
    }
    boolean range = next == RANGE;
    if (value) {
      return switch (form) {
        case SELECTION -> range && clause != ClauseWord.ROWS;
        case VALUE_OR_FLAG -> !range && kind.clauses().contains(ClauseWord.SLAB);
        case AT, VALUE ->
            !range && (clause == ClauseWord.MASS) == (next == UNIT && !LENGTHS.contains(after));
        case SPACED -> next == COMMA;
        default -> false;
      };
    }
    boolean dotted = found.getText().indexOf('.') > 0;
    return switch (form) {
      case SELECTION -> range && (clause == ClauseWord.ROWS || !dotted);
      case AT -> true;
      case NAME -> !range && !dotted;
      case FLAG -> found.getText().equals("others") && clause == ClauseWord.BY_OTHERS;
      default -> false;
    };
  }

  /** True if a token of that type follows before the next clause. */
  final boolean ahead(int type) {
    for (int i = 2; !endsLine(tokens.LA(i)) && Keywords.clauseOf(tokens.LA(i)) == null; i++) {
      if (tokens.LA(i) == type) {
        return true;
      }
    }
    return false;
  }

  /** What stands here up to the next blank that ends it: {@code 10..12}, {@code 6 psf}. */
  final String phrase() {
    return tokensText(found.start());
  }

  final TextRange range(int from) {
    return new TextRange(from, last().end());
  }

  final String tokensText(int from) {
    return found.part(NAME, from, last().end()).getText();
  }

  private WallToken last() {
    int at = 1;
    int next = tokens.LA(2);
    if (next == RANGE && !endsLine(tokens.LA(3))) {
      at = 3;
    } else if (next == UNIT) {
      at = 2;
    }
    return (WallToken) tokens.LT(at);
  }
}
