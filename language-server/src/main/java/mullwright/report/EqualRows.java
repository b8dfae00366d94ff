package mullwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Rows of numbers of pieces; pieces whose rows print alike share one, unless each is asked for. */
final class EqualRows {
  private final List<Column> columns;
  private final boolean each;
  private final Map<List<String>, List<String>> pieces = new LinkedHashMap<>();
  private final Map<List<String>, List<Entry>> cells = new LinkedHashMap<>();

  /**
   * No rows yet.
   *
   * @param columns those after the first, which names the pieces
   */
  EqualRows(List<Column> columns, boolean each) {
    this.columns = List.copyOf(columns);
    this.each = each;
  }

  /** Adds the row of a piece: a cell for each column after the first. */
  void add(String piece, List<Entry> row) {
    List<String> key = new ArrayList<>();
    if (each) {
      key.add(piece);
    }
    for (int at = 0; at < row.size(); at++) {
      key.add(Printed.plain(row.get(at), columns.get(at)));
    }
    pieces.computeIfAbsent(key, any -> new ArrayList<>()).add(piece);
    cells.putIfAbsent(key, row);
  }

  /** The table, in the order in which the first piece of each row was added. */
  Table table(String name, String title, String heading) {
    List<Column> all = new ArrayList<>(List.of(Column.names("piece", heading)));
    all.addAll(columns);
    List<List<Entry>> rows = new ArrayList<>();
    cells.forEach(
        (key, row) -> {
          List<Entry> whole = new ArrayList<>(List.of(new Entry.Names(pieces.get(key))));
          whole.addAll(row);
          rows.add(whole);
        });
    return new Table(name, title, all, rows, List.of());
  }
}
