package mullwright.syntax;

import static mullwright.syntax.antlr.WallLexer.*;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import mullwright.syntax.SyntaxProblem.Garbled;
import mullwright.syntax.SyntaxProblem.Garbled.How;
import org.antlr.v4.runtime.TokenStream;

/** A word misspelt, or two run together. */
final class WordSlips extends SlipPlace {
  private static final List<String> AFTER_NAMES = List.of("except", "every", "to");
  private static final List<String> AFTER_VALUES = List.of("above", "below", "to");

  WordSlips(TokenStream tokens, StatementKind kind) {
    super(tokens, kind);
  }

  /** The slip in the word that cannot stand here or in the one before, or null. */
  SyntaxProblem find(boolean word) {
    SyntaxProblem slip = word && numberRunsIn() ? runTogether() : null;
    slip = slip == null && word ? misspelt() : slip;
    slip = slip == null && word ? runTogether() : slip;
    slip = slip == null ? runTogetherBefore() : slip;
    return slip == null ? misspeltBefore() : slip;
  }

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

  /** A clause word that was read as a name: {@code vision V1 rwos R1..R2}. */
  private SyntaxProblem misspeltBefore() {
    String text = before.getText();
    if (before.getType() != NAME || text.length() < 4) {
      return null;
    }
    for (ClauseWord clause : kind.clauses()) {
      String word = first(clause);
      boolean near = word.length() > 3 && Spelling.distance(word, text) == 1;
      if (near && !said.contains(clause) && fits(clause)) {
        return new Garbled(How.MISSPELT, text, List.of(word), inside(), before.range());
      }
    }
    return null;
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
}
