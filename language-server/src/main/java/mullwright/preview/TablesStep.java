package mullwright.preview;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Tables of one kind, each row tied to the pieces it tells of. */
final class TablesStep extends CheckedStep {
  private final Tables tables;
  private final Tables.About about;
  private final String slot;
  private final String view;

  /**
   * @param slot where they stand
   * @param view beside the drawing in which that is
   */
  TablesStep(Tables tables, Tables.About about, String slot, String view) {
    this.tables = tables;
    this.about = about;
    this.slot = slot;
    this.view = view;
  }

  @Override
  boolean seen(Look look) {
    return look.sees(view);
  }

  @Override
  Object basis(SceneWall wall) {
    return wall.facts().orElseThrow().analysis();
  }

  @Override
  Object wishes(SceneWall wall, Look look) {
    return List.of(tables.units(wall.file()), wall.file().errors());
  }

  @Override
  List<Slot> nothing() {
    return List.of(new Slot(slot));
  }

  @Override
  List<Slot> paint(SceneWall wall, Look look) {
    Pieces pieces = new Pieces(wall.layout());
    Slot shown = new Slot(slot);
    for (Tables.Sheet sheet : tables.of(wall.file(), wall.index(), about)) {
      shown.put(sheet.title(), table(sheet, pieces));
    }
    if (about == Tables.About.CALCULATIONS && !shown.parts().isEmpty()) {
      shown.put("caution", "<p class=\"caution\">" + Markup.escaped(tables.caution()) + "</p>");
    }
    return List.of(shown);
  }

  private static String table(Tables.Sheet sheet, Pieces pieces) {
    StringBuilder out = new StringBuilder("<section><h3>");
    out.append(Markup.escaped(sheet.title())).append("</h3>");
    sheet.notes().forEach(note -> out.append("<p>").append(Markup.escaped(note)).append("</p>"));
    out.append("<table><thead><tr>");
    for (int at = 0; at < sheet.headings().size(); at++) {
      out.append(
              sheet.right().get(at) ? "<th scope=\"col\" class=\"right\">" : "<th scope=\"col\">")
          .append(Markup.escaped(sheet.headings().get(at)))
          .append("</th>");
    }
    out.append("</tr></thead><tbody>");
    sheet.rows().forEach(row -> row(sheet, row, pieces, out));
    return out.append("</tbody></table></section>").toString();
  }

  private static void row(Tables.Sheet sheet, Tables.Row row, Pieces pieces, StringBuilder out) {
    Set<String> ids = new LinkedHashSet<>();
    row.pieces().forEach(name -> pieces.named(name).forEach(piece -> ids.add(Pieces.id(piece))));
    out.append("<tr");
    if (row.total()) {
      out.append(" class=\"total\"");
    } else if (!ids.isEmpty()) {
      out.append(" data-pieces=\"").append(String.join(" ", ids)).append("\" tabindex=\"-1\"");
    }
    out.append('>');
    for (int at = 0; at < row.cells().size(); at++) {
      out.append(sheet.right().get(at) ? "<td class=\"right\">" : "<td>")
          .append(Markup.escaped(row.cells().get(at)))
          .append("</td>");
    }
    out.append("</tr>");
  }

  @Override
  public String what() {
    return "the " + slot;
  }
}
