package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.List;
import mullwright.layout.PieceMarks;
import mullwright.layout.WallLayout;

/**
 * The glass order: each make-up by size with its marks, order and billed sizes, area, mass and
 * setting blocks.
 *
 * <p>Tables in this order: make-ups, lites; rows in the order the lites first appear in the layout
 * (by bay, from below).
 */
@AutoService(Report.class)
public final class GlassReport implements Report {
  @Override
  public String name() {
    return "glass";
  }

  @Override
  public Document make(List<WallAtHand> walls, Options options) {
    return new Document(
        name(),
        "Glass order",
        walls.stream().map(wall -> section(wall, options)).toList(),
        List.of(Caution.WORDS));
  }

  private static Document.Section section(WallAtHand wall, Options options) {
    WallLayout layout = wall.facts().layout();
    String name = layout.wall().name();
    PieceMarks marks = Marks.of(wall);
    OrderTables tables = new OrderTables(layout, marks, wall.units(), options.each());
    List<Table> all =
        List.of(tables.makeUps(), tables.lites()).stream()
            .filter(table -> !table.rows().isEmpty())
            .toList();
    return new Document.Section(
        "Wall " + name, wall.file(), name, Warnings.of(wall, "ordered", all.isEmpty()), all);
  }
}
