package mullwright.syntax;

import static mullwright.syntax.antlr.WallLexer.*;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import mullwright.syntax.ClauseWord.Form;
import mullwright.syntax.SyntaxProblem.Garbled;
import mullwright.syntax.SyntaxProblem.Garbled.How;
import org.antlr.v4.runtime.TokenStream;

/**
 * Finds the slip of the pen behind a word that cannot stand where it stands: a word misspelt, two
 * run together, a clause word or a comma left out. Looks at one line and only after a mistake.
 */
final class LineMends {
  /** How many texts are offered; more would not help to choose. */
  private static final int OFFERED = 2;

  /** Units of lengths; a value with any other is no length. */
  private static final Set<String> LENGTHS = Set.of("mm", "cm", "m");

  private static final List<String> AFTER_NAMES = List.of("except", "every", "to");
  private static final List<String> AFTER_VALUES = List.of("above", "below", "to");

  private final TokenStream tokens;
  private final StatementKind kind;
  private final WallToken found;
  private final WallToken before;

  /** Clauses that stand on the line already. */
  private final Set<ClauseWord> said = EnumSet.noneOf(ClauseWord.class);

  private LineMends(TokenStream tokens, StatementKind kind) {
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

  /** The slip at the parser's place, or null if none is evident. */
  static SyntaxProblem find(TokenStream tokens, StatementKind kind) {
    WallToken found = (WallToken) tokens.LT(1);
    WallToken before = (WallToken) tokens.LT(-1);
    boolean word = found.getType() == NAME || found.getType() == REFERENCE;
    if (kind.clauses().isEmpty() || before == null || !word && !beginsValue(found.getType())) {
      return null;
    }
    LineMends mends = new LineMends(tokens, kind);
    SyntaxProblem slip = word && mends.numberRunsIn() ? mends.runTogether() : null;
    slip = slip == null && word ? mends.misspelt() : slip;
    slip = slip == null && word ? mends.runTogether() : slip;
    slip = slip == null ? mends.runTogetherBefore() : slip;
    return slip == null ? mends.leftOut() : slip;
  }

  private void note(int at) {
    ClauseWord clause = Keywords.clauseOf(tokens.get(at).getType());
    if (clause != null) {
      said.add(clause);
    }
  }

  private static boolean endsLine(int type) {
    return type == NL || type == LBRACE || type == RBRACE || type == EOF;
  }

  private static boolean beginsValue(int type) {
    return switch (type) {
      case NUMBER, LENGTH, COUNT, REFERENCE, LPAREN, SIGN -> true;
      default -> false;
    };
  }

  // ---- a word that is nearly one ---------------------------------------------------------------

  /** The words that may stand here. */
  private List<String> words() {
    List<String> words = new ArrayList<>();
    switch (before.getType()) {
      case BY_OTHERS -> words.add("others");
      case ISOLATED_BY, SPREAD_BY -> words.add("by");
      case BEDDED_ON -> words.add("on");
      case COUNT -> words.add("x");
      default -> {
        for (ClauseWord clause : kind.clauses()) {
          words.add(first(clause));
        }
        words.addAll(beginsValue(before.getType()) || unit() ? AFTER_VALUES : AFTER_NAMES);
        if (!reaches()) {
          words.remove("to");
        }
      }
    }
    words.remove("");
    return words;
  }

  /** True if a place may go on to another. */
  private boolean reaches() {
    return kind == StatementKind.ROW || kind.clauses().contains(ClauseWord.FROM);
  }

  private boolean unit() {
    return before.getType() == UNIT;
  }

  private static String first(ClauseWord clause) {
    return clause.spelling().split(" ")[0];
  }

  private SyntaxProblem misspelt() {
    String text = found.getText();
    if (text.length() < 2) {
      return null;
    }
    int allowed = text.length() < 6 ? 1 : 2;
    List<String> near = new ArrayList<>();
    for (int distance = 1; distance <= allowed && near.isEmpty(); distance++) {
      for (String word : words()) {
        if (word.length() > distance
            && Spelling.distance(word, text) == distance
            && isSlip(text, word)
            && (!endsLine(tokens.LA(2)) || word.equals("others"))) {
          near.add(word);
        }
      }
    }
    return near.isEmpty() ? null : new Garbled(How.MISSPELT, text, near, inside(), found.range());
  }

  /** Of words so short one letter more or another makes a name: only what keeps all letters. */
  private static boolean isSlip(String text, String word) {
    if (word.length() > 3) {
      return true;
    }
    boolean more = text.length() >= word.length();
    return more
        && word.chars().allMatch(letter -> text.indexOf(letter) >= 0)
        && text.chars().allMatch(letter -> word.indexOf(letter) >= 0);
  }

  // ---- two words in one ------------------------------------------------------------------------

  /** True of a number right after a word: {@code spaced20} is no slip of {@code spaced}. */
  private boolean numberRunsIn() {
    String apart = apart(found.getText(), words(), said);
    return !apart.isEmpty() && Character.isDigit(apart.charAt(apart.indexOf(' ') + 1));
  }

  private SyntaxProblem runTogether() {
    String text = found.getText();
    for (ClauseWord clause : kind.clauses()) {
      String spelling = clause.spelling();
      if (spelling.indexOf(' ') > 0 && text.equals(spelling.replace(" ", ""))) {
        return new Garbled(How.RUN_TOGETHER, text, List.of(spelling), inside(), found.range());
      }
    }
    String apart = apart(text, words(), said);
    return apart.isEmpty()
        ? null
        : new Garbled(How.RUN_TOGETHER, text, List.of(apart), inside(), found.range());
  }

  /**
   * The text with a blank after the clause word it begins with; empty if it begins with none, or
   * only with one that is said already.
   */
  static String apart(String text, List<String> words, Set<ClauseWord> said) {
    String longest = "";
    for (String word : words) {
      ClauseWord clause = Keywords.clause(word);
      boolean free = clause == null || !said.contains(clause);
      if (free && text.startsWith(word) && word.length() > longest.length()) {
        longest = word;
      }
    }
    String rest = text.substring(longest.length());
    return longest.isEmpty() || rest.isEmpty() || !Character.isLetterOrDigit(rest.charAt(0))
        ? ""
        : longest + " " + rest;
  }

  /** A clause word at the end of what was read before: {@code 2..20as mullion}. */
  private SyntaxProblem runTogetherBefore() {
    String text = before.getText();
    if (before.getType() != NAME) {
      return null;
    }
    for (ClauseWord clause : kind.clauses()) {
      String word = clause.spelling();
      int rest = text.length() - word.length();
      boolean ends = !word.isEmpty() && rest > 0 && text.endsWith(word);
      if (ends && !said.contains(clause) && fits(clause)) {
        String apart = text.substring(0, rest) + " " + word;
        return new Garbled(How.RUN_TOGETHER, text, List.of(apart), inside(), before.range());
      }
    }
    return null;
  }

  // ---- a word or comma left out ----------------------------------------------------------------

  private SyntaxProblem leftOut() {
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
    } else if (afterWholePart() && !strangersFollow()) {
      if (needsPlace() && !said.contains(ClauseWord.AT) && fits(ClauseWord.AT)) {
        meant.add(ClauseWord.AT.spelling() + " " + phrase);
        return new Garbled(How.WORD_LEFT_OUT, phrase, meant, inside(), range(from));
      }
      boolean one = oneMore();
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

  /** True if the statement says nothing without a place. */
  private boolean needsPlace() {
    return switch (kind) {
      case LINE, FLOOR, ROW, SPLICE, BRACKET, DEAD_LOAD, WIND_LOAD, CLIP -> true;
      default -> false;
    };
  }

  private String inside() {
    return kind.spelling();
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
        switch (kind) {
          case LINES_STATEMENT,
              FLOORS,
              VERTICAL,
              HORIZONTAL,
              SPLICE,
              REINFORCE,
              BRACKET,
              DEAD_LOAD,
              WIND_LOAD,
              CLIP,
              LADDER,
              STICK ->
              type == Keywords.type(kind);
          default -> false;
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
              (kind == StatementKind.LADDER || kind == StatementKind.STICK)
                  && earlier.getType() == Keywords.type(kind);
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

  /** True if what stands here may be what that clause takes. */
  private boolean fits(ClauseWord clause) {
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
  private boolean ahead(int type) {
    for (int i = 2; !endsLine(tokens.LA(i)) && Keywords.clauseOf(tokens.LA(i)) == null; i++) {
      if (tokens.LA(i) == type) {
        return true;
      }
    }
    return false;
  }

  /** What stands here up to the next blank that ends it: {@code 10..12}, {@code 6 psf}. */
  private String phrase() {
    return tokensText(found.start());
  }

  private TextRange range(int from) {
    return new TextRange(from, last().end());
  }

  private String tokensText(int from) {
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
