package mullwright.syntax;

import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.TokenSource;

/**
 * A token of the lexer or one the token step made of it, with its place counted from the start of
 * its segment; until it is cut, of the whole text.
 */
final class WallToken implements Token {
  private final String source;
  private final int offset;
  private final int type;
  private final int start;
  private final int end;
  private int index;

  /**
   * @param source the text it was read from
   * @param offset where the segment starts in {@code source}
   * @param start first code unit, counted from the segment's start
   * @param end code unit after the last; equal to {@code start} for a token that is not in the text
   */
  WallToken(String source, int offset, int type, int start, int end) {
    this.source = source;
    this.offset = offset;
    this.type = type;
    this.start = start;
    this.end = end;
  }

  /** The same stretch of text as a token of another type. */
  WallToken as(int otherType) {
    return new WallToken(source, offset, otherType, start, end);
  }

  /** A part of it, as a token of another type. */
  WallToken part(int otherType, int from, int to) {
    return new WallToken(source, offset, otherType, from, to);
  }

  int start() {
    return start;
  }

  int end() {
    return end;
  }

  TextRange range() {
    return new TextRange(start, end);
  }

  char charAt(int position) {
    return source.charAt(offset + position);
  }

  void placeAt(int tokenIndex) {
    this.index = tokenIndex;
  }

  @Override
  public String getText() {
    return source.substring(offset + start, offset + end);
  }

  @Override
  public int getType() {
    return type;
  }

  @Override
  public int getStartIndex() {
    return start;
  }

  @Override
  public int getStopIndex() {
    return end - 1;
  }

  @Override
  public int getTokenIndex() {
    return index;
  }

  @Override
  public int getLine() {
    return 0;
  }

  @Override
  public int getCharPositionInLine() {
    return start;
  }

  @Override
  public int getChannel() {
    return DEFAULT_CHANNEL;
  }

  @Override
  public TokenSource getTokenSource() {
    return null;
  }

  @Override
  public CharStream getInputStream() {
    return null;
  }

  @Override
  public String toString() {
    return type + "@" + start + ":" + getText();
  }
}
