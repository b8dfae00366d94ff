package mullwright.server.action;

import mullwright.syntax.LineTable;
import mullwright.syntax.TextRange;

/** Whole lines of a text round a stretch of it. */
final class Lines {
  private Lines() {}

  /** Where the line of an offset begins. */
  static int start(LineTable lines, int offset) {
    return lines.start(lines.line(offset));
  }

  /** Where the line after that of an offset begins, or the text ends. */
  static int after(LineTable lines, int offset, String text) {
    int line = lines.line(offset);
    return line + 1 < lines.count() ? lines.start(line + 1) : text.length();
  }

  /**
   * Whole lines with the blank lines that would be too many once they are gone: those above at the
   * end of the text, those below elsewhere.
   */
  static TextRange withSpareBlanks(TextRange whole, String text) {
    int before = whole.start();
    while (before > 0 && Character.isWhitespace(text.charAt(before - 1))) {
      before--;
    }
    int lineBefore = before == 0 ? 0 : text.indexOf('\n', before) + 1;
    if (text.substring(whole.end()).isBlank()) {
      return new TextRange(lineBefore, text.length());
    }
    int end = whole.end();
    if (lineBefore < whole.start() || before == 0) {
      for (int next = text.indexOf('\n', end);
          next >= 0 && text.substring(end, next).isBlank();
          next = text.indexOf('\n', end)) {
        end = next + 1;
      }
    }
    return new TextRange(whole.start(), end);
  }

  /** Lines that end as those of a text do, CR LF where its first does. */
  static String endingAs(String text, String lines) {
    int first = text.indexOf('\n');
    boolean both = first > 0 && text.charAt(first - 1) == '\r';
    return both ? lines.replaceAll("\r?\n", "\r\n") : lines.replace("\r\n", "\n");
  }

  /** Where the documentation and comments right above a line begin; itself if there are none. */
  static int withCommentsAbove(LineTable lines, int offset, String text) {
    int line = lines.line(offset);
    while (line > 0) {
      String above = text.substring(lines.start(line - 1), lines.end(line - 1)).strip();
      if (!above.startsWith("//")) {
        break;
      }
      line--;
    }
    return lines.start(line);
  }
}
