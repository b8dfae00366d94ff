package mullwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Writes a document as comma-separated values (RFC 4180): one block a table, each with a line of
 * names, an empty line between blocks. A length takes two columns: as printed, and exactly in
 * millimetres. Totals are left out: whoever reads this adds up himself.
 */
public final class CsvWriter implements DocumentWriter {
  private static final String END = "\r\n";

  @Override
  public String write(Document document) {
    List<String> blocks = new ArrayList<>();
    for (Document.Section section : document.sections()) {
      for (Table table : section.tables()) {
        blocks.add(block(section, table));
      }
    }
    return String.join(END, blocks);
  }

  private static String block(Document.Section section, Table table) {
    StringBuilder out = new StringBuilder();
    List<String> names = new ArrayList<>(List.of("file", "wall", "table"));
    table.columns().forEach(column -> names.addAll(names(column)));
    out.append(line(names));
    for (List<Entry> row : table.rows()) {
      List<String> values = new ArrayList<>(List.of(section.file(), section.wall(), table.name()));
      for (int at = 0; at < row.size(); at++) {
        values.addAll(values(row.get(at), table.columns().get(at)));
      }
      out.append(line(values));
    }
    return out.toString();
  }

  private static List<String> names(Column column) {
    String name = column.name();
    return switch (column.kind()) {
      case LENGTH -> List.of(name, name + "-mm");
      case RECTANGLE ->
          List.of(name + "-width", name + "-width-mm", name + "-height", name + "-height-mm");
      case AMOUNT -> List.of(name + "-" + column.unit().symbol());
      case TEXT, NAMES, COUNT -> List.of(name);
    };
  }

  private static List<String> values(Entry cell, Column column) {
    if (cell instanceof Entry.Size size) {
      return List.of(
          column.format().print(size.length()), size.length().millimetres().toPlainString());
    }
    if (cell instanceof Entry.Rectangle size) {
      return List.of(
          column.format().print(size.width()),
          size.width().millimetres().toPlainString(),
          column.format().print(size.height()),
          size.height().millimetres().toPlainString());
    }
    if (cell instanceof Entry.None) {
      return names(column).stream().map(name -> "").toList();
    }
    if (cell instanceof Entry.Phrases phrases) {
      return List.of(String.join("; ", phrases.phrases()));
    }
    return cell instanceof Entry.Names names
        ? List.of(String.join("; ", names.names()))
        : List.of(cell instanceof Entry.Text text ? text.text() : Printed.plain(cell, column));
  }

  private static String line(List<String> values) {
    return values.stream().map(CsvWriter::quoted).collect(Collectors.joining(",", "", END));
  }

  private static String quoted(String value) {
    boolean needed = value.chars().anyMatch(c -> c == '"' || c == ',' || c == '\r' || c == '\n');
    return needed ? "\"" + value.replace("\"", "\"\"") + "\"" : value;
  }
}
