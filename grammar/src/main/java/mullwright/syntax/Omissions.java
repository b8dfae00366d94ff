package mullwright.syntax;

import static mullwright.syntax.antlr.WallLexer.*;

import java.util.ArrayList;
import java.util.List;
import mullwright.syntax.SyntaxProblem.Garbled;
import mullwright.syntax.SyntaxProblem.Garbled.How;
import org.antlr.v4.runtime.TokenStream;

/** A clause word, a comma or the dots of a range left out. */
final class Omissions extends SlipPlace {
  /** How many texts are offered; more would not help to choose. */
  private static final int OFFERED = 2;

  Omissions(TokenStream tokens, StatementKind kind) {
    super(tokens, kind);
  }

  /** What is left out before the word that cannot stand here, or null. */
  SyntaxProblem find() {
    int from = found.start();
    List<String> meant = new ArrayList<>();
    String phrase = phrase();
    if (before.getType() == BY_OTHERS) {
      from = before.start();
      for (ClauseWord clause : kind.clauses()) {
        if (clause.spelling().endsWith(" by") && !said.contains(clause)) {
          meant.add(clause.spelling() + " " + phrase);
        }
      }
    } else if (before.getType() == ISOLATED_BY || before.getType() == SPREAD_BY) {
      meant.add("by " + phrase);
    } else if (before.getType() == BEDDED_ON) {
      meant.add("on " + phrase);
    } else if (previous() == BOLTED && before.getType() == COUNT) {
      meant.add("x " + phrase);
    } else if (inPlace() && found.getType() == NAME && !strangersFollow()) {
      meant.add("above " + phrase);
      meant.add("below " + phrase);
    } else if (afterWholePart() && !strangersFollow()) {
      if (needsPlace() && !said.contains(ClauseWord.AT) && fits(ClauseWord.AT)) {
        meant.add(ClauseWord.AT.spelling() + " " + phrase);
        return new Garbled(How.WORD_LEFT_OUT, phrase, meant, inside(), range(from));
      }
      boolean one = oneMore();
      if (one && isCountOfSpaces()) {
        meant.add("@ " + phrase);
        return new Garbled(How.WORD_OR_COMMA_LEFT_OUT, phrase, meant, inside(), range(from));
      }
      if (one && isAlike()) {
        How how = mayRange() ? How.COMMA_OR_RANGE_LEFT_OUT : How.COMMA_LEFT_OUT;
        return new Garbled(how, phrase, meant, inside(), range(from));
      }
      if (one && betweenLines()) {
        return new Garbled(How.RANGE_LEFT_OUT, phrase, List.of(), inside(), range(from));
      }
      for (ClauseWord clause : kind.clauses()) {
        boolean rare = one && clause.spelling().indexOf(' ') > 0;
        boolean other = clause == ClauseWord.AT && said.contains(ClauseWord.SPACED);
        if (!said.contains(clause) && !rare && !other && fits(clause)) {
          meant.add(clause.spelling() + " " + phrase);
        }
      }
      if (one && meant.size() <= 1) {
        How how =
            !meant.isEmpty()
                ? How.WORD_OR_COMMA_LEFT_OUT
                : mayRange() ? How.COMMA_OR_RANGE_LEFT_OUT : How.COMMA_LEFT_OUT;
        return new Garbled(how, phrase, meant, inside(), range(from));
      }
    }
    return meant.isEmpty()
        ? null
        : new Garbled(
            How.WORD_LEFT_OUT,
            tokensText(from),
            meant.subList(0, Math.min(OFFERED, meant.size())),
            inside(),
            range(from));
  }

  private int previous() {
    WallToken earlier = (WallToken) tokens.LT(-2);
    return earlier == null ? 0 : earlier.getType();
  }

  /** True if a height was read, which is one above or below something. */
  private boolean inPlace() {
    boolean height = beginsValue(before.getType()) || unit();
    boolean levels = kind != StatementKind.LINE && kind != StatementKind.LINES_STATEMENT;
    for (int i = -1; height && levels && tokens.LT(i) != null; i--) {
      int type = tokens.LT(i).getType();
      if (type == NL || type == ABOVE || type == BELOW) {
        return false;
      }
      ClauseWord clause = Keywords.clauseOf(type);
      if (clause != null) {
        return clause == ClauseWord.AT || clause == ClauseWord.FROM;
      }
    }
    return false;
  }

  /** True if a whole number was read in a spacing, and a distance follows. */
  private boolean isCountOfSpaces() {
    boolean spacing = previous() == SPACED || previous() == COMMA;
    return spacing
        && before.getType() == NUMBER
        && found.getType() != NUMBER
        && before.getText().chars().allMatch(Character::isDigit);
  }

  /** True of {@code R2} after {@code R1}: names of one row, which no other word need part. */
  private boolean isAlike() {
    String one = stem(before.getText());
    return before.getType() == NAME && one.length() > 0 && one.equals(stem(found.getText()));
  }

  /** The letters before the number that a name ends with; empty if it is not so made. */
  private static String stem(String name) {
    int end = name.length();
    while (end > 0 && Character.isDigit(name.charAt(end - 1))) {
      end--;
    }
    return end == name.length() ? "" : name.substring(0, end);
  }

  /** True if the statement says nothing without a place. */
  private boolean needsPlace() {
    return switch (kind) {
      case LINE, FLOOR, ROW, SPLICE, BRACKET, DEAD_LOAD, WIND_LOAD, CLIP -> true;
      default -> false;
    };
  }

  /** True if what was read before is whole, so that something new begins here. */
  private boolean afterWholePart() {
    return switch (before.getType()) {
      case NAME,
          STRING,
          ALL,
          NUMBER,
          LENGTH,
          COUNT,
          UNIT,
          REFERENCE,
          RPAREN,
          DIRECTION,
          OTHERS,
          SPLICES,
          OPERABLE,
          GLASS,
          EDGE ->
          true;
      default -> false;
    };
  }

  /** True if more words follow that nothing joins: what is wrong is more than a slip. */
  private boolean strangersFollow() {
    int next = tokens.LA(2);
    return found.getType() == NAME && (next == NAME || next == STRING || beginsValue(next));
  }

  /** True if a comma may have been meant: a name stands after a list of names. */
  private boolean oneMore() {
    boolean names = before.getType() == NAME && found.getType() == NAME;
    if (!names) {
      // distances and places of lines stand in lists
      boolean lists = kind.clauses().contains(ClauseWord.SPACED);
      boolean values = beginsValue(before.getType()) || unit();
      return lists && values && beginsValue(found.getType());
    }
    WallToken earlier = (WallToken) tokens.LT(-2);
    int type = earlier == null ? 0 : earlier.getType();
    boolean listed =
        switch (type) {
          case ITEM_COMMA, RANGE, EXCEPT, ABOVE, BELOW, OF, AT, BAYS, ROWS, ONLY, THROUGH -> true;
          default -> false;
        };
    boolean argument =
        switch (kind.form()) {
          case LINE_NAMES, FLOOR_NAMES, LINES, ROWS, BAYS -> type == Keywords.type(kind);
          case OWN, LINE_NAME, DEPTH_OF_FLOORS, LINE_AND_ANGLE, JOINED_LINES, GLASS -> false;
        };
    return listed || argument;
  }

  /** True if a space from one name to another is wanted, which no single name is. */
  private boolean betweenLines() {
    WallToken earlier = (WallToken) tokens.LT(-2);
    return mayRange()
        && switch (earlier.getType()) {
          case BAYS, ROWS, ONLY -> true;
          default ->
              kind.form() == StatementKind.Form.BAYS && earlier.getType() == Keywords.type(kind);
        };
  }

  /** True if the two names may be the ends of a range. */
  private boolean mayRange() {
    WallToken earlier = (WallToken) tokens.LT(-2);
    return before.getType() == NAME
        && found.getType() == NAME
        && earlier != null
        && earlier.getType() != RANGE
        && tokens.LA(2) != RANGE;
  }
}
