package mullwright.syntax;

import static mullwright.syntax.antlr.WallLexer.NAME;

import java.util.List;
import java.util.Set;
import mullwright.syntax.SyntaxProblem.Garbled;

/** A clause word run together with the value after it: {@code gap5/8"}. */
final class GluedClause {
  private GluedClause() {}

  /**
   * The slip, if a word of one of the statement's clauses runs into a value; else null.
   *
   * @param line raw tokens of the line
   * @param at where the word is among them
   */
  static Garbled find(List<WallToken> line, int at, StatementKind kind) {
    WallToken token = line.get(at);
    List<String> words = kind.clauses().stream().map(ClauseWord::spelling).toList();
    String word = withoutDash(token.getText());
    String apart = WordSlips.apart(word, words, Set.of());
    int blank = apart.indexOf(' ');
    if (blank < 0 || !Character.isDigit(apart.charAt(blank + 1))) {
      return null;
    }
    int dash = token.getText().length() - word.length();
    int last = at;
    while (last + 1 < line.size() && line.get(last + 1).start() == line.get(last).end()) {
      last++;
    }
    WallToken all = token.part(NAME, token.start(), line.get(last).end());
    String meant = all.getText().substring(0, blank) + " " + all.getText().substring(blank + dash);
    return new Garbled(
        Garbled.How.RUN_TOGETHER, all.getText(), List.of(meant), kind.spelling(), all.range());
  }

  /** The word without a dash before its first digit: {@code gap-5/8"} is no smaller than that. */
  private static String withoutDash(String word) {
    int dash = word.indexOf('-');
    boolean digit =
        dash > 0 && dash + 1 < word.length() && Character.isDigit(word.charAt(dash + 1));
    return digit ? word.substring(0, dash) + word.substring(dash + 1) : word;
  }
}
