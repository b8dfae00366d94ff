package mullwright.syntax;

import static mullwright.syntax.antlr.WallLexer.*;

import java.util.List;
import java.util.Map;
import mullwright.syntax.SyntaxProblem.Garbled;
import mullwright.syntax.SyntaxProblem.Garbled.How;
import org.antlr.v4.runtime.TokenStream;

/** A word or sign that says in other languages, or in plain English, what a word here says. */
final class OtherSpellings {
  private static final Map<String, String> BEARINGS =
      Map.of("under", "below", "beneath", "below", "over", "above", "atop", "above");

  private OtherSpellings() {}

  /** The word of the language for what stands at the parser's place, or null. */
  static SyntaxProblem find(TokenStream tokens, StatementKind kind) {
    WallToken found = (WallToken) tokens.LT(1);
    WallToken before = (WallToken) tokens.LT(-1);
    String text = found.getText();
    int next = tokens.LA(2);
    boolean name = next == NAME || next == STRING;
    boolean value = SlipPlace.beginsValue(next);
    // after a number it is one of a spacing
    boolean names = before.getType() == NAME || before.getType() == ALL;
    String meant =
        switch (found.getType()) {
          case EACH -> (name || value) && names && takes(kind, ClauseWord.AT) ? "at" : "";
          case ASSIGN -> (name || next == REFERENCE) && takes(kind, ClauseWord.AS) ? "as" : "";
          case NAME ->
              name && before.getType() == NAME && text.equals("and")
                  ? ","
                  : name && before.getType() != NAME ? BEARINGS.getOrDefault(text, "") : "";
          default -> "";
        };
    return meant.isEmpty()
        ? null
        : new Garbled(How.MISSPELT, text, List.of(meant), kind.spelling(), found.range());
  }

  private static boolean takes(StatementKind kind, ClauseWord clause) {
    return kind.clauses().contains(clause);
  }
}
