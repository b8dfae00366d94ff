package mullwright.syntax;

import static mullwright.syntax.antlr.WallParser.*;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import mullwright.syntax.antlr.WallParser;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.RecognitionException;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.TokenStream;
import org.antlr.v4.runtime.misc.IntervalSet;

/** Says in a drafter's words what could have stood where the parser stopped. */
final class Expectations {
  private Expectations() {}

  /** The keyword of the statement that is being read, or null between statements. */
  static Token keyword(ParserRuleContext rule) {
    for (ParserRuleContext outer = rule; outer != null; outer = outer.getParent()) {
      if (outer instanceof BlockContext || outer instanceof SegmentContext) {
        return null;
      }
      if (outer instanceof StatementContext) {
        return outer.getStart();
      }
    }
    return null;
  }

  /** What could have stood there: clauses the statement takes, and kinds of value and name. */
  static List<String> words(WallParser parser, RecognitionException mistake) {
    ParserRuleContext rule = parser.getContext();
    if (keyword(rule) == null) {
      return List.of("a statement");
    }
    IntervalSet expected = mistake.getExpectedTokens();
    Set<String> words = new LinkedHashSet<>();
    boolean place = expected.contains(FLOOR_WORD);
    boolean name = expected.contains(NAME);
    if (place) {
      words.add("a place");
    } else if (expected.contains(ALL)) {
      words.add("names");
    } else if (name) {
      words.add("a name");
    }
    if (name && isReservedName(parser.getInputStream())) {
      words.add("\"" + mistake.getOffendingToken().getText() + "\"");
    }
    if (!place && expected.contains(LENGTH)) {
      words.add("a value");
    }
    StatementKind kind = kind(rule);
    for (ClauseWord clause : kind.clauses()) {
      if (clause != ClauseWord.LOADS && expected.contains(Keywords.type(clause))) {
        words.add(clause.spelling());
      }
    }
    for (int type : expected.toArray()) {
      boolean covered =
          place && (type == ALL || type == FLOOR_WORD)
              || name && type == STRING
              || expected.contains(NL) && (type == LBRACE || type == RBRACE);
      if (!covered && !fixed(type).isEmpty()) {
        words.add(fixed(type));
      }
    }
    return new ArrayList<>(words);
  }

  /** True if a word of the language stands where it was evidently meant as a name. */
  private static boolean isReservedName(TokenStream tokens) {
    int word = tokens.LA(1);
    int next = tokens.LA(2);
    boolean reserved = word >= AT && word <= HOLD;
    return reserved && (next == ASSIGN || next == RANGE || next >= AT && next <= LOADS);
  }

  /** The statement that is being read; there is one. */
  static StatementKind kind(ParserRuleContext rule) {
    int type = keyword(rule).getType();
    for (StatementKind kind : StatementKind.values()) {
      if (Keywords.type(kind) == type) {
        return kind;
      }
    }
    return StatementKind.UNKNOWN;
  }

  /** Words and marks with one spelling; the rest is covered by kinds. */
  private static String fixed(int type) {
    return switch (type) {
      case TO -> "to";
      case BY -> "by";
      case ON -> "on";
      case OTHERS -> "others";
      case ALL -> "all";
      case EVERY -> "every";
      case EXCEPT -> "except";
      case ABOVE -> "above";
      case BELOW -> "below";
      case OF -> "of";
      case SPLICES -> "splices";
      case EQUAL -> "equal";
      case IN -> "in";
      case TIMES -> "x";
      case DIRECTION -> "a direction";
      case COUNT -> "a whole number";
      case EACH -> "@";
      case ASSIGN -> "=";
      case RANGE -> "..";
      case ITEM_COMMA, COMMA -> ",";
      case RPAREN -> ")";
      case LBRACE -> "{";
      case STRING -> "text in quotes";
      case NL -> "end of line";
      default -> "";
    };
  }
}
