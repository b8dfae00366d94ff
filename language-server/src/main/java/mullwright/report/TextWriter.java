package mullwright.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Writes a document as plain text for a terminal or a printer. A table that is too wide wraps the
 * cells that can be broken; if that is not enough, each row stands on several lines. A figure is
 * never broken and never cut off.
 *
 * @param width columns a line may take
 */
public record TextWriter(int width, Paint paint) implements DocumentWriter {
  private static final int GAP = 2;

  /** Of the further lines of a row that is over one. */
  private static final int INDENT = 6;

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
    List<Band> bands = bands(cells, columns);
    rows(cells.get(0), bands, out);
    int total = bands.stream().mapToInt(Band::total).max().orElse(0);
    line("-".repeat(total), out);
    for (int at = 1; at < cells.size(); at++) {
      if (at > table.rows().size()) {
        line("-".repeat(total), out);
      }
      rows(cells.get(at), bands, out);
    }
  }

  /** Columns that stand on one line, the first of them at {@code from}. */
  private record Band(int from, int indent, List<Column> columns, int[] widths) {
    int total() {
      return indent + (widths.length - 1) * GAP + Arrays.stream(widths).sum();
    }
  }

  /** One band if all columns fit once wrapped; else as many as it takes, a row over all. */
  private List<Band> bands(List<List<String>> cells, List<Column> columns) {
    List<Band> bands = new ArrayList<>();
    int from = 0;
    while (from < columns.size()) {
      int indent = from == 0 ? 0 : INDENT;
      int to = from;
      int least = indent - GAP;
      while (to < columns.size() && (to == from || least + GAP + least(cells, to) <= width)) {
        least += GAP + least(cells, to++);
      }
      int[] widths = widths(cells, from, to, width - indent);
      bands.add(new Band(from, indent, columns.subList(from, to), widths));
      from = to;
    }
    return bands;
  }

  private static int least(List<List<String>> cells, int column) {
    return cells.stream().mapToInt(row -> TextWidth.longestWord(row.get(column))).max().orElse(0);
  }

  private static void rows(List<String> cells, List<Band> bands, StringBuilder out) {
    for (Band band : bands) {
      List<String> those = cells.subList(band.from(), band.from() + band.widths().length);
      if (band.from() > 0 && those.stream().allMatch(String::isEmpty)) {
        continue;
      }
      row(those, band.columns(), band.widths(), band.indent(), out);
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
  private static int[] widths(List<List<String>> cells, int from, int to, int room) {
    int columns = to - from;
    int[] widths = new int[columns];
    int[] least = new int[columns];
    int total = (columns - 1) * GAP;
    for (int column = 0; column < columns; column++) {
      for (List<String> row : cells) {
        widths[column] = Math.max(widths[column], TextWidth.of(row.get(from + column)));
      }
      least[column] = least(cells, from + column);
      total += widths[column];
    }
    while (total > room) {
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
      List<String> cells, List<Column> columns, int[] widths, int indent, StringBuilder out) {
    List<List<String>> wrapped = new ArrayList<>();
    int height = 1;
    for (int at = 0; at < cells.size(); at++) {
      List<String> lines = TextWidth.wrap(cells.get(at), widths[at]);
      wrapped.add(lines);
      height = Math.max(height, lines.size());
    }
    for (int below = 0; below < height; below++) {
      StringBuilder line = new StringBuilder(TextWidth.spaces(indent));
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
