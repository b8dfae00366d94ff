package mullwright.report;

import java.util.ArrayList;
import java.util.List;

/**
 * Writes a document as plain text for a terminal or a printer. A table that is too wide wraps the
 * cells that can be broken; a figure is never broken and never cut off.
 *
 * @param width columns a line may take
 */
public record TextWriter(int width, Paint paint) implements DocumentWriter {
  private static final int GAP = 2;

  @Override
  public String write(Document document) {
    StringBuilder out = new StringBuilder();
    line(paint.bold(TextWidth.harmless(document.title())), out);
    for (Document.Section section : document.sections()) {
      out.append('\n');
      String title = TextWidth.harmless(section.title());
      line(paint.bold(title), out);
      line("=".repeat(Math.min(width, TextWidth.of(title))), out);
      section.warnings().forEach(words -> wrapped(words, true, out));
      for (Table table : section.tables()) {
        out.append('\n');
        write(table, out);
      }
    }
    out.append('\n');
    document.closing().forEach(words -> wrapped(words, false, out));
    return out.toString();
  }

  private void wrapped(String words, boolean loud, StringBuilder out) {
    for (String line : TextWidth.wrap(TextWidth.harmless(words), width)) {
      line(loud ? paint.bold(line) : paint.dim(line), out);
    }
  }

  private void write(Table table, StringBuilder out) {
    wrapped(table.title(), true, out);
    Folded folded = Folded.of(table);
    folded.said().forEach(words -> wrapped(words, false, out));
    List<List<String>> cells = new ArrayList<>();
    List<Column> columns = folded.kept().stream().map(table.columns()::get).toList();
    cells.add(columns.stream().map(Printed::heading).toList());
    table.rows().forEach(row -> cells.add(printed(row, folded, columns)));
    if (!table.totals().isEmpty()) {
      cells.add(printed(table.totals(), folded, columns));
    }
    int[] widths = widths(cells, columns.size());
    int total = (columns.size() - 1) * GAP;
    for (int columnWidth : widths) {
      total += columnWidth;
    }
    row(cells.get(0), columns, widths, out);
    line("-".repeat(total), out);
    for (int at = 1; at < cells.size(); at++) {
      if (at > table.rows().size()) {
        line("-".repeat(total), out);
      }
      row(cells.get(at), columns, widths, out);
    }
  }

  private static List<String> printed(List<Entry> row, Folded folded, List<Column> columns) {
    List<String> cells = new ArrayList<>();
    for (int at = 0; at < columns.size(); at++) {
      cells.add(Printed.cell(row.get(folded.kept().get(at)), columns.get(at)));
    }
    return cells;
  }

  /** As wide as they like; if that is too wide, the widest that can be broken gives way first. */
  private int[] widths(List<List<String>> cells, int columns) {
    int[] widths = new int[columns];
    int[] least = new int[columns];
    int total = (columns - 1) * GAP;
    for (int column = 0; column < columns; column++) {
      for (List<String> row : cells) {
        widths[column] = Math.max(widths[column], TextWidth.of(row.get(column)));
        least[column] = Math.max(least[column], TextWidth.longestWord(row.get(column)));
      }
      total += widths[column];
    }
    while (total > width) {
      int widest = -1;
      for (int column = 0; column < columns; column++) {
        boolean gives = widths[column] > least[column];
        if (gives && (widest < 0 || widths[column] > widths[widest])) {
          widest = column;
        }
      }
      if (widest < 0) {
        break;
      }
      widths[widest]--;
      total--;
    }
    return widths;
  }

  private static void row(
      List<String> cells, List<Column> columns, int[] widths, StringBuilder out) {
    List<List<String>> wrapped = new ArrayList<>();
    int height = 1;
    for (int at = 0; at < cells.size(); at++) {
      List<String> lines = TextWidth.wrap(cells.get(at), widths[at]);
      wrapped.add(lines);
      height = Math.max(height, lines.size());
    }
    for (int below = 0; below < height; below++) {
      StringBuilder line = new StringBuilder();
      for (int at = 0; at < cells.size(); at++) {
        String part = below < wrapped.get(at).size() ? wrapped.get(at).get(below) : "";
        line.append(at == 0 ? "" : TextWidth.spaces(GAP))
            .append(TextWidth.padded(part, widths[at], columns.get(at).right()));
      }
      line(line.toString(), out);
    }
  }

  private static void line(String text, StringBuilder out) {
    out.append(text.replace(TextWidth.GLUE, ' ').stripTrailing()).append('\n');
  }
}
