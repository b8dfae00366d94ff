package mullwright.syntax;

import java.util.Arrays;

/**
 * Where lines start in a text: offset to line and column and back, for LF, CRLF and CR alike.
 *
 * <p>Lines and columns count from 0, columns in UTF-16 code units, as editors speak of them.
 */
public final class LineTable {
  private final int length;
  private final int[] starts;
  private final int[] ends;

  private LineTable(int length, int[] starts, int[] ends) {
    this.length = length;
    this.starts = starts;
    this.ends = ends;
  }

  /** The table of a text. */
  public static LineTable of(String text) {
    int[] starts = new int[16];
    int[] ends = new int[16];
    int lines = 0;
    int feed = text.indexOf('\n');
    int carriage = text.indexOf('\r');
    while (feed >= 0 || carriage >= 0) {
      if (lines + 2 > starts.length) {
        starts = Arrays.copyOf(starts, starts.length * 2);
        ends = Arrays.copyOf(ends, ends.length * 2);
      }
      boolean returns = carriage >= 0 && (feed < 0 || carriage < feed);
      int end = returns ? carriage : feed;
      int next = returns && feed == end + 1 ? feed + 1 : end + 1;
      ends[lines++] = end;
      starts[lines] = next;
      feed = feed < 0 || feed >= next ? feed : text.indexOf('\n', next);
      carriage = carriage < 0 || carriage >= next ? carriage : text.indexOf('\r', next);
    }
    ends[lines] = text.length();
    return new LineTable(
        text.length(), Arrays.copyOf(starts, lines + 1), Arrays.copyOf(ends, lines + 1));
  }

  /**
   * The table after an edit: only the lines it touches are looked for anew.
   *
   * @param text the text after it
   * @param start where the edit begins, {@code end} where what it replaces ended
   */
  LineTable edited(String text, int start, int end) {
    int shift = text.length() - length;
    // a line end may be half of this edit and half of the line before
    int from = Math.max(0, line(start) - 1);
    int after = line(end) + 1;
    boolean toTheEnd = after == starts.length;
    int at = starts[from];
    LineTable anew = of(text.substring(at, toTheEnd ? text.length() : starts[after] + shift));
    // behind the last line end of a stretch begins a line that is told of already
    int more = toTheEnd ? anew.count() : anew.count() - 1;
    int[] newStarts = new int[from + more + starts.length - after];
    int[] newEnds = new int[newStarts.length];
    System.arraycopy(starts, 0, newStarts, 0, from);
    System.arraycopy(ends, 0, newEnds, 0, from);
    for (int i = 0; i < more; i++) {
      newStarts[from + i] = at + anew.starts[i];
      newEnds[from + i] = at + anew.ends[i];
    }
    for (int i = from + more; i < newStarts.length; i++) {
      int old = i - from - more + after;
      newStarts[i] = starts[old] + shift;
      newEnds[i] = ends[old] + shift;
    }
    return new LineTable(text.length(), newStarts, newEnds);
  }

  /** How many lines there are, at least one. */
  public int count() {
    return starts.length;
  }

  /** The line that offset lies in; an offset past the end lies in the last. */
  public int line(int offset) {
    int found = Arrays.binarySearch(starts, Math.max(0, offset));
    return found >= 0 ? found : -found - 2;
  }

  /** How far into its line that offset lies. */
  public int column(int offset) {
    int inside = Math.max(0, Math.min(offset, length));
    return inside - starts[line(inside)];
  }

  /** Where the line starts. */
  public int start(int line) {
    return starts[line];
  }

  /** Where the line ends, its line end left out. */
  public int end(int line) {
    return ends[line];
  }

  /** The offset of a line and column; what lies outside the text is moved to the nearest inside. */
  public int offset(int line, int column) {
    if (line < 0) {
      return 0;
    }
    if (line >= starts.length) {
      return length;
    }
    return Math.min(starts[line] + Math.max(0, column), ends[line]);
  }
}
