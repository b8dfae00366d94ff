package mullwright.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A table as people read it, for whoever shows it another way than the writers do.
 *
 * @param right by column, true if its cells stand to the right
 * @param said what is said once for all rows
 */
public record PlainTable(
    String title, List<String> headings, List<Boolean> right, List<Row> rows, List<String> said) {
  private static final char NO_BREAK = '\u00a0';

  /**
   * A row.
   *
   * @param names every piece it names, also those a cell has no room for
   * @param total true for the sum of the others
   */
  public record Row(List<String> cells, List<String> names, boolean total) {
    public Row {
      cells = List.copyOf(cells);
      names = List.copyOf(names);
    }
  }

  public PlainTable {
    headings = List.copyOf(headings);
    right = List.copyOf(right);
    rows = List.copyOf(rows);
    said = List.copyOf(said);
  }

  /** The table printed. */
  public static PlainTable of(Table table) {
    Folded folded = Folded.of(table);
    List<Column> columns = folded.kept().stream().map(table.columns()::get).toList();
    List<Row> rows = new ArrayList<>();
    table.rows().forEach(row -> rows.add(row(row, folded, columns, false)));
    if (!table.totals().isEmpty()) {
      rows.add(row(table.totals(), folded, columns, true));
    }
    return new PlainTable(
        table.title(),
        columns.stream().map(Printed::heading).toList(),
        columns.stream().map(Column::right).toList(),
        rows,
        folded.said());
  }

  private static Row row(List<Entry> cells, Folded folded, List<Column> columns, boolean total) {
    List<String> printed = new ArrayList<>();
    List<String> names = new ArrayList<>();
    for (int at = 0; at < columns.size(); at++) {
      Entry cell = cells.get(folded.kept().get(at));
      printed.add(Printed.cell(cell, columns.get(at)).replace(TextWidth.GLUE, NO_BREAK));
      if (cell instanceof Entry.Names named) {
        names.addAll(named.names());
      }
    }
    return new Row(printed, names, total);
  }
}
