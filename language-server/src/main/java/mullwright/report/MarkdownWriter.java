package mullwright.report;

import java.util.List;
import java.util.stream.Collectors;

/** Writes a document as Markdown with pipe tables (GitHub Flavored Markdown, section 4.10). */
public final class MarkdownWriter implements DocumentWriter {
  @Override
  public String write(Document document) {
    StringBuilder out = new StringBuilder("# " + escaped(document.title()) + "\n");
    for (Document.Section section : document.sections()) {
      out.append("\n## ").append(escaped(section.title())).append('\n');
      section.warnings().forEach(words -> out.append("\n**").append(escaped(words)).append("**\n"));
      for (Table table : section.tables()) {
        write(table, out);
      }
    }
    document.closing().forEach(words -> out.append("\n_").append(escaped(words)).append("_\n"));
    return out.toString();
  }

  private static void write(Table table, StringBuilder out) {
    out.append("\n### ").append(escaped(table.title())).append("\n");
    Folded folded = Folded.of(table);
    folded.said().forEach(words -> out.append('\n').append(escaped(words)).append('\n'));
    List<Column> columns = folded.kept().stream().map(table.columns()::get).toList();
    out.append('\n').append(row(columns.stream().map(Printed::heading).toList()));
    out.append(row(columns.stream().map(column -> column.right() ? "---:" : "---").toList()));
    table.rows().forEach(row -> out.append(row(printed(row, folded, table))));
    if (!table.totals().isEmpty()) {
      out.append(row(printed(table.totals(), folded, table)));
    }
  }

  private static List<String> printed(List<Entry> row, Folded folded, Table table) {
    return folded.kept().stream()
        .map(at -> escaped(Printed.plain(row.get(at), table.columns().get(at))))
        .toList();
  }

  private static String row(List<String> cells) {
    return cells.stream().collect(Collectors.joining(" | ", "| ", " |\n"));
  }

  private static String escaped(String text) {
    return TextWidth.harmless(text).replaceAll("[\\\\`*_|<\\[\\]#]", "\\\\$0");
  }
}
