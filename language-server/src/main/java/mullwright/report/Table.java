package mullwright.report;

import java.util.List;

/**
 * A titled table.
 *
 * @param name as programs know it: {@code verticals}
 * @param rows each with a cell for every column; their order is part of the report's contract
 * @param totals the last row, with a cell for every column, or empty
 */
public record Table(
    String name, String title, List<Column> columns, List<List<Entry>> rows, List<Entry> totals) {
  public Table {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    totals = List.copyOf(totals);
    for (List<Entry> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(name + ": a row of " + row.size() + " cells");
      }
    }
    if (!totals.isEmpty() && totals.size() != columns.size()) {
      throw new IllegalArgumentException(name + ": totals of " + totals.size() + " cells");
    }
  }
}
