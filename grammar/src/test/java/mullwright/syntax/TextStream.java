package mullwright.syntax;

import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.IntStream;
import org.antlr.v4.runtime.misc.Interval;

/**
 * Text as the generated lexer must see it to find what {@link TableLexer} finds: counted in UTF-16
 * code units, with one letter for all beyond ASCII.
 *
 * <p>The streams that come with the runtime count code points, so their places would differ from an
 * editor's after the first character outside the basic plane.
 */
final class TextStream implements CharStream {
  private static final int ASCII = 0x80;

  private final String text;
  private int at;

  TextStream(String text, int start) {
    this.text = text;
    this.at = start;
  }

  @Override
  public int LA(int i) {
    int wanted = i > 0 ? at + i - 1 : at + i;
    if (i == 0 || wanted < 0 || wanted >= text.length()) {
      return IntStream.EOF;
    }
    char letter = text.charAt(wanted);
    return letter >= ASCII && Character.isLetter(letter) ? TableLexer.OTHER_LETTER : letter;
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
