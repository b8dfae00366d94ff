package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import mullwright.layout.CoverPiece;
import mullwright.layout.WallLayout;
import mullwright.takeoff.cutting.CutList;

/**
 * Cut lengths of every piece of a wall, and sizes of its glass.
 *
 * <p>Tables in this order: verticals, horizontals, pressure plates, face caps, glass sizes, glass
 * area and mass; rows in the order the pieces first appear in the layout (verticals by line, from
 * below; horizontals by row, from the left; lites by bay, from below). Totals are sums of exact
 * values, rounded when printed.
 */
@AutoService(Report.class)
public final class LengthsReport implements Report {
  @Override
  public String name() {
    return "lengths";
  }

  @Override
  public Document make(List<WallAtHand> walls, Options options) {
    return new Document(
        name(),
        "Cut lengths",
        walls.stream().map(wall -> section(wall, options)).toList(),
        List.of(Caution.WORDS));
  }

  private static Document.Section section(WallAtHand wall, Options options) {
    WallLayout layout = wall.facts().layout();
    String name = layout.wall().name();
    PieceTables pieces =
        new PieceTables(
            layout, Marks.of(wall), wall.units(), CutList.finish(layout.wall()), options.each());
    GlassTables glass = new GlassTables(layout, Marks.of(wall), wall.units(), options.each());
    List<Table> tables = new ArrayList<>();
    tables.add(pieces.verticals());
    tables.add(pieces.horizontals());
    tables.add(pieces.covers(CoverPiece.What.PRESSURE_PLATE));
    tables.add(pieces.covers(CoverPiece.What.FACE_CAP));
    tables.addAll(glass.tables());
    tables.removeIf(table -> table.rows().isEmpty());
    return new Document.Section(
        "Wall " + name, wall.file(), name, Warnings.ofCutting(wall, tables.isEmpty()), tables);
  }
}
