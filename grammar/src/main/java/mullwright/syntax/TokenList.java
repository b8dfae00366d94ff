package mullwright.syntax;

import java.util.List;
import org.antlr.v4.runtime.RuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.TokenSource;
import org.antlr.v4.runtime.TokenStream;
import org.antlr.v4.runtime.misc.Interval;

/** The token step's result as the generated parser wants it; the last token is the end of file. */
final class TokenList implements TokenStream {
  private final List<WallToken> tokens;
  private int at;

  TokenList(List<WallToken> tokens) {
    this.tokens = tokens;
    for (int i = 0; i < tokens.size(); i++) {
      tokens.get(i).placeAt(i);
    }
  }

  @Override
  public WallToken LT(int k) {
    int wanted = k > 0 ? at + k - 1 : at + k;
    return k == 0 || wanted < 0 ? null : get(Math.min(wanted, tokens.size() - 1));
  }

  @Override
  public int LA(int k) {
    Token token = LT(k);
    return token == null ? Token.INVALID_TYPE : token.getType();
  }

  @Override
  public WallToken get(int index) {
    return tokens.get(index);
  }

  @Override
  public void consume() {
    if (at < tokens.size() - 1) {
      at++;
    }
  }

  @Override
  public int index() {
    return at;
  }

  @Override
  public void seek(int index) {
    at = index;
  }

  @Override
  public int size() {
    return tokens.size();
  }

  @Override
  public int mark() {
    return 0;
  }

  @Override
  public void release(int marker) {
    // all tokens stay at hand
  }

  @Override
  public TokenSource getTokenSource() {
    return null;
  }

  @Override
  public String getText(Interval interval) {
    StringBuilder text = new StringBuilder();
    for (int i = interval.a; i <= interval.b && i < tokens.size(); i++) {
      text.append(tokens.get(i).getText());
    }
    return text.toString();
  }

  @Override
  public String getText() {
    return getText(Interval.of(0, tokens.size() - 1));
  }

  @Override
  public String getText(RuleContext context) {
    return getText(context.getSourceInterval());
  }

  @Override
  public String getText(Token start, Token stop) {
    return getText(Interval.of(start.getTokenIndex(), stop.getTokenIndex()));
  }

  @Override
  public String getSourceName() {
    return "wall";
  }
}
