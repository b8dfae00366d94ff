package mullwright.format;

import java.util.ArrayList;
import java.util.List;
import mullwright.syntax.ParsedFile;
import mullwright.syntax.TextRange;

/** Lays out wall text: the whole of a file, or the edits that bring it there. */
public final class Formatter {
  private Formatter() {}

  /** The text of a file, laid out. */
  public static String format(ParsedFile file) {
    StringBuilder text = new StringBuilder(file.text().length());
    int at = 0;
    for (TextEdit edit : edits(file)) {
      text.append(file.text(), at, edit.start()).append(edit.text());
      at = edit.end();
    }
    return text.append(file.text(), at, file.text().length()).toString();
  }

  /** The smallest edits, line by line, that lay out the file; in order, none touching another. */
  public static List<TextEdit> edits(ParsedFile file) {
    return LineEdits.of(file, laidOut(file));
  }

  /**
   * Those of {@link #edits(ParsedFile)} that fall on lines the range touches.
   *
   * @param range counted from the start of the file
   */
  public static List<TextEdit> edits(ParsedFile file, TextRange range) {
    List<TextEdit> within = new ArrayList<>();
    int start = file.lines().start(file.lines().line(range.start()));
    int end = file.lines().end(file.lines().line(range.end()));
    for (TextEdit edit : edits(file)) {
      if (edit.start() >= start && edit.start() <= end) {
        within.add(edit);
      }
    }
    return List.copyOf(within);
  }

  private static List<Line> laidOut(ParsedFile file) {
    List<Line> lines = FileLines.of(file);
    Runs.align(lines);
    BlankLines.collapse(lines);
    return lines;
  }
}
