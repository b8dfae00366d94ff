package mullwright.report;

import mullwright.syntax.LineTable;
import mullwright.syntax.ParsedFile;
import mullwright.workspace.FilePlace;

/**
 * The line of text a finding stands on, ready to be shown with carets under it.
 *
 * @param line its number, from 1
 * @param text the line, tabs and all, without its line end
 * @param start offset in {@code text} of the first character pointed at, {@code end} after the last
 * @param furtherLines how many more lines the stretch goes on for
 */
public record Excerpt(int line, String text, int start, int end, int furtherLines) {
  private static final int TAB = 4;

  static Excerpt of(ParsedFile file, FilePlace place) {
    LineTable lines = file.lines();
    int first = lines.line(place.start());
    int last = lines.line(Math.max(place.start(), place.end() - 1));
    int begin = lines.start(first);
    String text = file.text().substring(begin, lines.end(first));
    int start = Math.min(place.start() - begin, text.length());
    int end = Math.max(start, Math.min(place.end() - begin, text.length()));
    return new Excerpt(first + 1, text, start, end, last - first);
  }

  /** What is shown: the line and the carets below it, both at most {@code width} columns. */
  record Shown(String line, String carets) {}

  /** The line with its tabs spread; of a longer one the part round the carets. */
  Shown shown(int width) {
    StringBuilder line = new StringBuilder();
    int[] columns = new int[text.length() + 1];
    int column = 0;
    for (int at = 0; at < text.length(); ) {
      int c = text.codePointAt(at);
      int next = at + Character.charCount(c);
      columns[at] = column;
      if (next - at == 2) {
        columns[at + 1] = column;
      }
      if (c == '\t') {
        int room = TAB - column % TAB;
        line.append(TextWidth.spaces(room));
        column += room;
      } else {
        String clean = TextWidth.harmless(text.substring(at, next));
        line.append(clean);
        column += TextWidth.of(clean);
      }
      at = next;
    }
    columns[text.length()] = column;
    int from = columns[start];
    int to = Math.max(from + 1, columns[end]);
    String all = line.toString().stripTrailing();
    if (Math.max(TextWidth.of(all), to) <= width) {
      return new Shown(all, TextWidth.spaces(from) + "^".repeat(to - from));
    }
    return window(line.toString(), from, to, width);
  }

  // leading blanks go first, then as much before the carets as leaves room for them
  private static Shown window(String line, int from, int to, int width) {
    int total = TextWidth.of(line.stripTrailing());
    int lead = line.length() - line.stripLeading().length();
    int skip = Math.min(lead, from);
    boolean cutLeft = false;
    if (to - skip > width) {
      int wanted = Math.min(to - from, width - 2);
      skip = Math.max(0, from - Math.max(0, (width - wanted) / 3));
      cutLeft = skip > 0;
    }
    boolean cutRight = total - skip > width;
    int room = width - (cutLeft ? 1 : 0) - (cutRight ? 1 : 0);
    int begin = skip + (cutLeft ? 1 : 0);
    String part = (cutLeft ? "…" : "") + slice(line, begin, begin + room) + (cutRight ? "…" : "");
    int shownFrom = Math.min(from - skip, width - 1);
    int shownTo = Math.max(shownFrom + 1, Math.min(to - skip, width));
    return new Shown(
        part.stripTrailing(), TextWidth.spaces(shownFrom) + "^".repeat(shownTo - shownFrom));
  }

  /** The characters that lie in those columns; a wide one cut in two becomes a blank. */
  private static String slice(String line, int from, int to) {
    StringBuilder part = new StringBuilder();
    int column = 0;
    for (int at = 0; at < line.length() && column < to; ) {
      int c = line.codePointAt(at);
      int width = TextWidth.of(c);
      if (column >= from && column + width <= to) {
        part.appendCodePoint(c);
      } else if (column + width > from) {
        part.append(' ');
      }
      column += width;
      at += Character.charCount(c);
    }
    return part.toString();
  }
}
