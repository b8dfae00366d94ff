package mullwright.syntax;

import static mullwright.syntax.antlr.WallLexer.*;

import org.antlr.v4.runtime.TokenStream;

/**
 * Finds the slip of the pen behind a word that cannot stand where it stands: a word misspelt, two
 * run together, a clause word or a comma left out. Looks at one line and only after a mistake.
 */
final class LineMends {
  private LineMends() {}

  /** The slip at the parser's place, or null if none is evident. */
  static SyntaxProblem find(TokenStream tokens, StatementKind kind) {
    int found = tokens.LA(1);
    boolean word = found == NAME || found == REFERENCE;
    boolean looked = word || SlipPlace.beginsValue(found);
    if (kind.clauses().isEmpty() || tokens.LT(-1) == null) {
      return null;
    }
    SyntaxProblem slip = OtherSpellings.find(tokens, kind);
    if (slip != null || !looked) {
      return slip;
    }
    slip = new WordSlips(tokens, kind).find(word);
    return slip == null ? new Omissions(tokens, kind).find() : slip;
  }
}
