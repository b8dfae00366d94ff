package mullwright.syntax;

import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.IntStream;
import org.antlr.v4.runtime.misc.Interval;

/**
 * Text as the lexer wants it, counted in UTF-16 code units.
 *
 * <p>The streams that come with the runtime count code points, so their places would differ from an
 * editor's after the first character outside the basic plane; here a lone surrogate is just another
 * stray character.
 */
final class TextStream implements CharStream {
  private final String text;
  private int at;

  TextStream(String text, int start) {
    this.text = text;
    this.at = start;
  }

  @Override
  public int LA(int i) {
    int wanted = i > 0 ? at + i - 1 : at + i;
    return i == 0 || wanted < 0 || wanted >= text.length() ? IntStream.EOF : text.charAt(wanted);
  }

  @Override
  public void consume() {
    if (at >= text.length()) {
      throw new IllegalStateException("nothing left to consume");
    }
    at++;
  }

  @Override
  public int index() {
    return at;
  }

  @Override
  public void seek(int index) {
    at = Math.min(index, text.length());
  }

  @Override
  public int size() {
    return text.length();
  }

  @Override
  public int mark() {
    return 0;
  }

  @Override
  public void release(int marker) {
    // the whole text stays at hand
  }

  @Override
  public String getText(Interval interval) {
    int end = Math.min(interval.b + 1, text.length());
    return interval.a >= end ? "" : text.substring(interval.a, end);
  }

  @Override
  public String getSourceName() {
    return "wall";
  }
}
