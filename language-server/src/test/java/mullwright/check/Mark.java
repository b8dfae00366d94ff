package mullwright.check;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import mullwright.syntax.LineTable;
import mullwright.syntax.TextRange;

/**
 * A finding as a comment of a fixture draws it.
 *
 * @param from first column, or -1 where any will do
 * @param to column after the last
 * @param rule the rule's name
 * @param words what the message must hold
 */
record Mark(int from, int to, String rule, String words) {
  private static final Pattern DRAWN = Pattern.compile("//( +)(\\^+) ([a-z-]+): (.*)");
  private static final Pattern ABOVE = Pattern.compile("// > ([a-z-]+): (.*)");

  /** The leftmost column a caret can stand in, right of the slashes. */
  private static final int LEFTMOST = 2;

  /** A mark with the line it points at, counted from 0. */
  record Placed(Mark mark, int line) {
    /** True if it is of that finding, which stands in that text. */
    boolean isOf(Finding finding, TextRange range, String text) {
      return LineTable.of(text).line(range.start()) == line
          && finding.rule().equals(mark.rule)
          && finding.message().contains(mark.words)
          && (mark.from < 0
              || (column(text, range.start()) == mark.from && end(range, text) == mark.to));
    }

    @Override
    public String toString() {
      return "line " + (line + 1) + ": " + mark;
    }
  }

  /** The mark on a line, if it is one. */
  static Optional<Mark> read(String line) {
    Matcher drawn = DRAWN.matcher(line);
    if (drawn.matches()) {
      int from = LEFTMOST + drawn.group(1).length();
      return Optional.of(
          new Mark(from, from + drawn.group(2).length(), drawn.group(3), drawn.group(4)));
    }
    Matcher above = ABOVE.matcher(line);
    return above.matches()
        ? Optional.of(new Mark(-1, -1, above.group(1), above.group(2)))
        : Optional.empty();
  }

  /** The line that draws a finding. */
  static String drawn(Finding finding, TextRange range, String text) {
    String words =
        finding.rule() + ": " + (finding.piece().isEmpty() ? finding.what() : finding.piece());
    int from = column(text, range.start());
    // at least one blank after the slashes
    return from <= LEFTMOST
        ? "// > " + words
        : "//" + " ".repeat(from - LEFTMOST) + "^".repeat(end(range, text) - from) + " " + words;
  }

  private static int column(String text, int offset) {
    return LineTable.of(text).column(offset);
  }

  // of a range over several lines the first counts
  private static int end(TextRange range, String text) {
    LineTable lines = LineTable.of(text);
    int lineEnd = lines.end(lines.line(range.start()));
    return lines.column(range.start()) + Math.min(range.end(), lineEnd) - range.start();
  }

  @Override
  public String toString() {
    return rule + ": " + words + (from < 0 ? "" : " (columns " + from + " to " + to + ")");
  }
}
