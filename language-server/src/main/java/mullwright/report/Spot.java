package mullwright.report;

import java.util.function.UnaryOperator;
import mullwright.syntax.LineTable;
import mullwright.syntax.ParsedFile;
import mullwright.workspace.FilePlace;

/**
 * A stretch of a file as people count it: lines and columns from 1, columns in characters (Unicode
 * code points).
 *
 * @param file as shown to the reader
 * @param line first line, {@code endLine} last
 * @param column of the first character, {@code endColumn} of the one after the last
 */
public record Spot(String file, int line, int column, int endLine, int endColumn) {
  /** The place in that file's text. */
  static Spot of(String shown, ParsedFile file, FilePlace place) {
    LineTable lines = file.lines();
    int last = lines.line(place.end());
    return new Spot(
        shown,
        lines.line(place.start()) + 1,
        column(file, place.start()),
        last + 1,
        column(file, place.end()));
  }

  /** The same with its path as the reader is shown it. */
  Spot shown(UnaryOperator<String> shown) {
    return new Spot(shown.apply(file), line, column, endLine, endColumn);
  }

  private static int column(ParsedFile file, int offset) {
    int start = file.lines().start(file.lines().line(offset));
    return file.text().codePointCount(start, offset) + 1;
  }

  /** {@code east.wall:12:5}, as terminals and editors open it. */
  String words() {
    return TextWidth.harmless(file) + ":" + line + ":" + column;
  }
}
