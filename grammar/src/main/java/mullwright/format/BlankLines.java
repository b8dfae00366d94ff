package mullwright.format;

import java.util.List;

/** Keeps single blank lines between statements and takes out all others. */
final class BlankLines {
  private BlankLines() {}

  /** Takes out blank lines at either end of the file or of a block, and all but one of several. */
  static void collapse(List<Line> lines) {
    Line before = null;
    int blank = -1;
    for (int i = 0; i < lines.size(); i++) {
      Line line = lines.get(i);
      if (line.isBlank()) {
        line.become(null);
        blank = i;
        continue;
      }
      if (blank >= 0 && before != null && stays(before, line)) {
        lines.get(blank).become("");
      }
      blank = -1;
      before = line;
    }
  }

  private static boolean stays(Line before, Line after) {
    boolean opened = before.isOpening() && !before.isKept();
    boolean closes = after.isClosing() && !after.isKept();
    return !opened && !closes;
  }
}
