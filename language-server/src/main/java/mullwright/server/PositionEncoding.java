package mullwright.server;

import java.util.List;

/**
 * In what units the columns of the protocol count.
 *
 * <p>LSP 3.17, {@code PositionEncodingKind}. Texts here are UTF-16, so that one costs nothing.
 */
public enum PositionEncoding {
  UTF16("utf-16") {
    @Override
    int columns(CharSequence line, int units) {
      return units;
    }

    @Override
    int units(CharSequence line, int columns) {
      return Math.min(columns, line.length());
    }
  },
  UTF8("utf-8") {
    @Override
    int width(int codePoint) {
      return codePoint < 0x80 ? 1 : codePoint < 0x800 ? 2 : codePoint < 0x10000 ? 3 : 4;
    }
  },
  UTF32("utf-32");

  private final String word;

  PositionEncoding(String word) {
    this.word = word;
  }

  /** As the protocol spells it. */
  public String word() {
    return word;
  }

  /** The client's first choice among those known here; UTF-16 if it names none. */
  static PositionEncoding chosen(List<String> offered) {
    for (String word : offered) {
      for (PositionEncoding encoding : values()) {
        if (encoding.word.equals(word)) {
          return encoding;
        }
      }
    }
    return UTF16;
  }

  /** How many columns one code point takes. */
  int width(int codePoint) {
    return 1;
  }

  /** The column after the first {@code units} UTF-16 code units of a line. */
  int columns(CharSequence line, int units) {
    int columns = 0;
    for (int i = 0; i < units; ) {
      int codePoint = Character.codePointAt(line, i);
      columns += width(codePoint);
      i += Character.charCount(codePoint);
    }
    return columns;
  }

  /**
   * How many UTF-16 code units of a line lie before a column; the whole line if it is shorter. A
   * column inside a character counts as before it.
   */
  int units(CharSequence line, int columns) {
    int passed = 0;
    int i = 0;
    while (i < line.length()) {
      int codePoint = Character.codePointAt(line, i);
      passed += width(codePoint);
      if (passed > columns) {
        break;
      }
      i += Character.charCount(codePoint);
    }
    return i;
  }
}
