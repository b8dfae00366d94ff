package mullwright.syntax;

import java.util.ArrayList;
import java.util.List;
import mullwright.syntax.antlr.WallLexer;
import org.antlr.v4.runtime.Token;

/** The lexer that ANTLR generates of the grammar: what {@link TableLexer} is held to. */
final class GeneratedLexer extends WallLexer {
  private final int lastCommentEnd;

  private GeneratedLexer(String text, int start) {
    super(new TextStream(text, start));
    this.lastCommentEnd = text.lastIndexOf("*/");
  }

  @Override
  protected boolean commentEnds() {
    return getInputStream().index() <= lastCommentEnd;
  }

  /** Type, start and end of each token from a place on, the end of the text among them. */
  static List<Integer> tokens(String text, int start) {
    GeneratedLexer lexer = new GeneratedLexer(text, start);
    List<Integer> tokens = new ArrayList<>();
    Token token;
    do {
      token = lexer.nextToken();
      tokens.addAll(List.of(token.getType(), token.getStartIndex(), token.getStopIndex() + 1));
    } while (token.getType() != Token.EOF);
    return tokens;
  }
}
