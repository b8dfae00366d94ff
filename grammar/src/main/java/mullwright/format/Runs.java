package mullwright.format;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Puts the cells of adjacent lines of one keyword in columns. */
final class Runs {
  private static final int TAB = 4;

  private Runs() {}

  /** Sets what every line becomes. */
  static void align(List<Line> lines) {
    int i = 0;
    while (i < lines.size()) {
      Line line = lines.get(i);
      if (!line.isAligned()) {
        plain(line);
        i++;
        continue;
      }
      List<Line> run = new ArrayList<>();
      Columns columns = new Columns();
      int next = i;
      while (next < lines.size() && joins(lines.get(next), line)) {
        Line candidate = lines.get(next);
        if (candidate.isAligned()) {
          if (!columns.take(candidate)) {
            break;
          }
          run.add(candidate);
        }
        next++;
      }
      columns.layOut(run);
      i = next;
    }
  }

  /** A line of the keyword that is kept as it is stands in a run without breaking it. */
  private static boolean joins(Line candidate, Line first) {
    return candidate.keyword().equals(first.keyword())
        && (candidate.isKept() || candidate.isAligned() && candidate.indent() == first.indent());
  }

  private static void plain(Line line) {
    if (line.isKept()) {
      return;
    }
    StringBuilder text = new StringBuilder();
    for (Line.Cell cell : line.cells()) {
      text.append(cell.text());
    }
    if (!line.comment().isEmpty()) {
      text.append(text.length() == 0 ? "" : "  ").append(line.comment());
    }
    line.become(text.length() == 0 ? "" : " ".repeat(line.indent()) + text);
  }

  /** The columns of one run. */
  private static final class Columns {
    private final List<String> order = new ArrayList<>();

    /** Makes room for the cells of a line; false if their order goes against that of the others. */
    boolean take(Line line) {
      List<String> keys = new ArrayList<>();
      for (Line.Cell cell : line.cells()) {
        keys.add(cell.key());
      }
      int last = -1;
      for (String key : keys) {
        int place = order.indexOf(key);
        if (place >= 0 && place <= last) {
          return false;
        }
        last = Math.max(last, place);
      }
      int at = order.size();
      for (int i = keys.size() - 1; i >= 0; i--) {
        int place = order.indexOf(keys.get(i));
        if (place >= 0) {
          at = place;
        } else {
          order.add(at, keys.get(i));
        }
      }
      return true;
    }

    void layOut(List<Line> run) {
      List<StringBuilder> texts = new ArrayList<>();
      List<Map<String, String>> cells = new ArrayList<>();
      for (Line line : run) {
        texts.add(new StringBuilder(" ".repeat(line.indent())));
        Map<String, String> byKey = new HashMap<>();
        line.cells().forEach(cell -> byKey.put(cell.key(), cell.text()));
        cells.add(byKey);
      }
      for (String key : order) {
        int column = 0;
        for (int i = 0; i < run.size(); i++) {
          if (cells.get(i).containsKey(key)) {
            column = Math.max(column, earliest(texts.get(i), run, key));
          }
        }
        for (int i = 0; i < run.size(); i++) {
          if (cells.get(i).containsKey(key)) {
            pad(texts.get(i), column).append(cells.get(i).get(key));
          }
        }
      }
      comments(run, texts);
      for (int i = 0; i < run.size(); i++) {
        run.get(i).become(texts.get(i).toString());
      }
    }

    private int earliest(StringBuilder text, List<Line> run, String key) {
      if (key.equals("keyword")) {
        return text.length();
      }
      if (run.size() == 1) {
        return text.length() + (isClose(key) || key.equals("value") ? 1 : 2);
      }
      return tab(text.length() + (isClose(key) ? 1 : 2));
    }

    /** True for a cell that one space is enough to part from what it follows. */
    private boolean isClose(String key) {
      return order.indexOf(key) == 1 || key.equals("bearing") || key.equals("assigned");
    }

    private static int tab(int end) {
      return (end + TAB - 1) / TAB * TAB;
    }

    private static void comments(List<Line> run, List<StringBuilder> texts) {
      int column = 0;
      for (int i = 0; i < run.size(); i++) {
        if (!run.get(i).comment().isEmpty()) {
          int end = texts.get(i).length() + 2;
          column = Math.max(column, run.size() == 1 ? end : tab(end));
        }
      }
      for (int i = 0; i < run.size(); i++) {
        if (!run.get(i).comment().isEmpty()) {
          pad(texts.get(i), column).append(run.get(i).comment());
        }
      }
    }

    private static StringBuilder pad(StringBuilder text, int column) {
      return text.append(" ".repeat(Math.max(0, column - text.length())));
    }
  }
}
