package mullwright.report;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.layout.PieceRef;
import mullwright.layout.WallLayout;
import mullwright.review.FixingChange;
import mullwright.review.PieceChange;
import mullwright.review.WallReview;
import mullwright.workspace.FileReview;

/**
 * Writes a comparison as one page without anything from outside: both elevations side by side with
 * what changed hatched, and the tables below.
 */
public final class ReviewHtml {
  private static final String STYLE =
      """
      body{font:15px/1.45 system-ui,sans-serif;margin:2rem auto;max-width:1180px;padding:0 1rem;\
      color:#1c1c1c;background:#fff}
      h1{font-size:1.4rem}h2{font-size:1.15rem;margin-top:2.2rem;border-bottom:1px solid #bbb}
      h3{font-size:1rem;margin:1.4rem 0 .4rem}
      table{border-collapse:collapse;width:100%}
      th,td{text-align:left;vertical-align:top;padding:.25rem .6rem;border-bottom:1px solid #ddd}
      th{border-bottom:2px solid #888}td.right,th.right{text-align:right;white-space:nowrap}.short{white-space:nowrap}
      .sides{display:grid;grid-template-columns:1fr 1fr;gap:1rem}
      figure{margin:0;border:1px solid #ddd;padding:.5rem}figcaption{font-weight:600}
      svg{width:100%;height:auto;max-height:70vh}
      .legend span{display:inline-block;margin-right:1.4rem}
      .legend svg{width:2.2em;height:1.1em;vertical-align:middle;margin-right:.4em}
      .warning{font-weight:600}footer{color:#555;margin-top:2rem}
      """;

  /** Letters a cell may have and still not be broken over lines. */
  private static final int SHORT = 16;

  private static final String SHORT_CELL = " class=\"short\"";

  private ReviewHtml() {}

  /** The whole page. */
  public static String write(ReviewInput input) {
    Document document = ReviewDocument.make(input);
    StringBuilder out = new StringBuilder();
    out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n")
        .append("<meta name=\"viewport\" content=\"width=device-width\">\n<title>")
        .append(escaped(document.title()))
        .append("</title>\n<style>\n")
        .append(STYLE)
        .append("</style>\n</head>\n<body>\n<h1>")
        .append(escaped(document.title()))
        .append("</h1>\n");
    Map<String, WallReview> walls = new HashMap<>();
    for (FileReview file : input.files()) {
      file.walls().forEach(wall -> walls.put(ReviewInput.name(file) + "\n" + wall.name(), wall));
    }
    legend(out);
    int number = 0;
    for (Document.Section section : document.sections()) {
      number++;
      out.append("<section>\n<h2>").append(escaped(section.title())).append("</h2>\n");
      section
          .warnings()
          .forEach(
              words -> out.append("<p class=\"warning\">").append(escaped(words)).append("</p>\n"));
      WallReview wall = walls.get(section.file() + "\n" + section.wall());
      if (wall != null) {
        elevations(input, wall, "w" + number, out);
      }
      section.tables().forEach(table -> table(table, out));
      out.append("</section>\n");
    }
    out.append("<footer>\n");
    document.closing().forEach(words -> out.append("<p>").append(escaped(words)).append("</p>\n"));
    return out.append("</footer>\n</body>\n</html>\n").toString();
  }

  private static void elevations(ReviewInput input, WallReview wall, String id, StringBuilder out) {
    Map<PieceRef, PieceChange.What> old = new HashMap<>();
    Map<PieceRef, PieceChange.What> now = new HashMap<>();
    for (PieceChange piece : wall.pieces()) {
      piece.before().ifPresent(state -> old.put(state.ref(), piece.what()));
      piece.after().ifPresent(state -> now.put(state.ref(), piece.what()));
    }
    for (FixingChange fixing : wall.fixings()) {
      fixing.before().ifPresent(ref -> old.put(ref, fixing.what()));
      fixing.after().ifPresent(ref -> now.put(ref, fixing.what()));
    }
    out.append("<div class=\"sides\">\n");
    figure(input.from(), id + "a", wall.old(), old, out);
    figure(input.to(), id + "b", wall.now(), now, out);
    out.append("</div>\n");
  }

  private static void figure(
      String caption,
      String id,
      Optional<WallLayout> layout,
      Map<PieceRef, PieceChange.What> tints,
      StringBuilder out) {
    out.append("<figure>\n<figcaption>").append(escaped(caption)).append("</figcaption>\n");
    out.append(
        layout
            .map(wall -> new ElevationSvg(id, wall, tints).write())
            .filter(drawn -> !drawn.isEmpty())
            .orElse("<p>Nothing to draw.</p>\n"));
    out.append("</figure>\n");
  }

  private static void legend(StringBuilder out) {
    out.append("<p class=\"legend\">");
    for (List<String> one :
        List.of(
            List.of("new", "M0 20L20 0M20 20L40 0", "#1b7f3b"),
            List.of("gone", "M0 20L20 0M0 0L20 20M20 20L40 0M20 0L40 20", "#b3261e"),
            List.of("changed", "M10 6L10 14M30 6L30 14", "#9a6700"))) {
      out.append("<span><svg viewBox=\"0 0 40 20\"><rect width=\"40\" height=\"20\" fill=\"")
          .append(one.get(2))
          .append("\" fill-opacity=\".25\"/><path d=\"")
          .append(one.get(1))
          .append("\" stroke=\"")
          .append(one.get(2))
          .append("\" stroke-width=\"4\" fill=\"none\"/></svg>")
          .append(one.get(0))
          .append("</span>");
    }
    out.append("</p>\n");
  }

  private static void table(Table table, StringBuilder out) {
    Folded folded = Folded.of(table);
    List<Column> columns = folded.kept().stream().map(table.columns()::get).toList();
    out.append("<h3>").append(escaped(table.title())).append("</h3>\n");
    folded.said().forEach(words -> out.append("<p>").append(escaped(words)).append("</p>\n"));
    out.append("<table>\n<tr>");
    for (Column column : columns) {
      out.append(column.right() ? "<th class=\"right\">" : "<th>")
          .append(escaped(Printed.heading(column)))
          .append("</th>");
    }
    out.append("</tr>\n");
    for (List<Entry> row : table.rows()) {
      out.append("<tr>");
      for (int at = 0; at < columns.size(); at++) {
        Column column = columns.get(at);
        String cell = Printed.cell(row.get(folded.kept().get(at)), column);
        String kind =
            column.right() ? " class=\"right\"" : cell.length() <= SHORT ? SHORT_CELL : "";
        out.append("<td").append(kind).append('>').append(escaped(cell)).append("</td>");
      }
      out.append("</tr>\n");
    }
    out.append("</table>\n");
  }

  /** Text that stands for itself in a page. */
  static String escaped(String text) {
    return TextWidth.harmless(text)
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
