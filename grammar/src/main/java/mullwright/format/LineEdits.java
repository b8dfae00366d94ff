package mullwright.format;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import mullwright.syntax.LineTable;
import mullwright.syntax.ParsedFile;

/** The edits from the lines as written to the lines as laid out. */
final class LineEdits {
  private final String text;
  private final LineTable table;
  private final String lineEnd;
  private final List<TextEdit> edits = new ArrayList<>();

  private LineEdits(ParsedFile file) {
    this.text = file.text();
    this.table = file.lines();
    boolean one = table.count() == 1;
    this.lineEnd = one ? "\n" : text.substring(table.end(0), table.start(1));
  }

  /**
   * Those of some of the lines.
   *
   * @param wanted of which, by number
   */
  static List<TextEdit> of(ParsedFile file, List<Line> lines, IntPredicate wanted) {
    LineEdits edits = new LineEdits(file);
    for (int i = 0; i < lines.size(); i++) {
      if (wanted.test(i)) {
        edits.line(i, lines.get(i).result());
      }
    }
    return List.copyOf(edits.edits);
  }

  private void line(int number, String result) {
    int start = table.start(number);
    int end = table.end(number);
    boolean last = number + 1 == table.count();
    int next = last ? text.length() : table.start(number + 1);
    if (result == null) {
      if (next > start) {
        replace(start, next, "");
      }
      return;
    }
    change(start, end, result);
    if (!text.substring(end, next).equals(lineEnd)) {
      replace(end, next, lineEnd);
    }
  }

  /** Replaces no more than what differs. */
  private void change(int start, int end, String result) {
    int from = 0;
    int longest = Math.min(end - start, result.length());
    while (from < longest && text.charAt(start + from) == result.charAt(from)) {
      from++;
    }
    int same = 0;
    while (same < longest - from
        && text.charAt(end - 1 - same) == result.charAt(result.length() - 1 - same)) {
      same++;
    }
    if (start + from < end - same || from < result.length() - same) {
      replace(start + from, end - same, result.substring(from, result.length() - same));
    }
  }

  /** Joins an edit to the one before where they meet, so that no two touch. */
  private void replace(int start, int end, String with) {
    int last = edits.size() - 1;
    if (last >= 0 && edits.get(last).end() == start) {
      TextEdit before = edits.remove(last);
      edits.add(new TextEdit(before.start(), end, before.text() + with));
    } else {
      edits.add(new TextEdit(start, end, with));
    }
  }
}
