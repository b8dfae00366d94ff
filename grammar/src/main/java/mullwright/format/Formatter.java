package mullwright.format;

import java.util.BitSet;
import java.util.List;
import mullwright.syntax.LineTable;
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
    return LineEdits.of(file, laidOut(file), line -> true);
  }

  /**
   * Those on lines that any of the ranges touches; the line one ends before, as where whole lines
   * are chosen, is none of them.
   *
   * @param ranges counted from the start of the file
   */
  public static List<TextEdit> edits(ParsedFile file, List<TextRange> ranges) {
    LineTable lines = file.lines();
    BitSet touched = new BitSet();
    for (TextRange range : ranges) {
      int first = lines.line(range.start());
      int last = lines.line(range.end());
      boolean before = last > first && lines.start(last) == range.end();
      touched.set(first, before ? last : last + 1);
    }
    return LineEdits.of(file, laidOut(file), touched::get);
  }

  private static List<Line> laidOut(ParsedFile file) {
    List<Line> lines = FileLines.of(file);
    Runs.align(lines);
    BlankLines.collapse(lines);
    return lines;
  }
}
