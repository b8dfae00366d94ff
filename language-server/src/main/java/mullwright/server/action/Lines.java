package mullwright.server.action;

import mullwright.syntax.LineTable;

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
