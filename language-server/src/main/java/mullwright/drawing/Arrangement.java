package mullwright.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Puts many small drawings on sheets: in rows from the top left, as many as find room.
 *
 * <p>A drawing too large for a sheet stands alone on one, and reaches over its border.
 */
public final class Arrangement {
  private static final String NOTHING =
      "Nothing can be drawn yet: it needs members whose profiles are in a catalog the wall uses.";

  private final Paper paper;
  private final TitleBlock titleBlock;
  private final String title;
  private final Box room;
  private final double gap;

  /**
   * How they are arranged.
   *
   * @param title of the sheets
   * @param gap between drawings [mm]
   */
  public Arrangement(Paper paper, TitleBlock titleBlock, String title, double gap) {
    this.paper = paper;
    this.titleBlock = titleBlock;
    this.title = title;
    this.room = Sheet.room(paper);
    this.gap = gap;
  }

  /** The room for drawings on one sheet. */
  public Box room() {
    return room;
  }

  /**
   * The sheets, numbered from 1.
   *
   * @param panels stand on the first one
   */
  public List<Sheet> sheets(List<? extends Drawing> drawings, List<Panel> panels) {
    List<List<Sheet.Placed>> pages = new ArrayList<>();
    List<Sheet.Placed> page = new ArrayList<>();
    double top = room.top();
    for (List<Drawing> row : rows(drawings, room.width(), gap)) {
      double height = height(row);
      if (!page.isEmpty() && top - height < room.bottom()) {
        pages.add(page);
        page = new ArrayList<>();
        top = room.top();
      }
      place(row, room.left(), top, gap, page);
      top -= height + gap;
    }
    if (!page.isEmpty()) {
      pages.add(page);
    }
    if (pages.isEmpty()) {
      return List.of(
          new Sheet(
              paper,
              titleBlock,
              title,
              new Scale(1, "none"),
              1,
              1,
              List.of(),
              List.of(new Panel("Notes", List.of(Panel.Row.of(NOTHING))))));
    }
    List<Sheet> sheets = new ArrayList<>();
    for (List<Sheet.Placed> each : pages) {
      sheets.add(
          new Sheet(
              paper,
              titleBlock,
              title,
              each.get(0).drawing().scale(),
              sheets.size() + 1,
              pages.size(),
              each,
              sheets.isEmpty() ? panels : List.of()));
    }
    return sheets;
  }

  private static List<List<Drawing>> rows(
      List<? extends Drawing> drawings, double width, double gap) {
    List<List<Drawing>> rows = new ArrayList<>();
    List<Drawing> row = new ArrayList<>();
    double free = width;
    for (Drawing one : drawings) {
      double wide = one.extent().width();
      if (!row.isEmpty() && free < wide) {
        rows.add(row);
        row = new ArrayList<>();
        free = width;
      }
      row.add(one);
      free -= wide + gap;
    }
    if (!row.isEmpty()) {
      rows.add(row);
    }
    return rows;
  }

  private static void place(
      List<Drawing> row, double left, double top, double gap, List<Sheet.Placed> page) {
    double x = left;
    for (Drawing one : row) {
      Box extent = one.extent();
      page.add(new Sheet.Placed(one, x - extent.left(), top - extent.top()));
      x += extent.width() + gap;
    }
  }

  private static double height(List<Drawing> row) {
    return row.stream().mapToDouble(one -> one.extent().height()).max().orElse(0);
  }

  /**
   * The same drawings in rows of a width, as one drawing without a sheet.
   *
   * @param width of the rows [mm]
   */
  public static Drawing board(
      String title, List<? extends Drawing> drawings, double width, double gap) {
    List<Sheet.Placed> placed = new ArrayList<>();
    double top = 0;
    for (List<Drawing> row : rows(drawings, width, gap)) {
      place(row, 0, top, gap, placed);
      top -= height(row) + gap;
    }
    return new Board(title, placed);
  }

  /** Drawings of one scale beside each other. */
  private record Board(String title, List<Sheet.Placed> drawings) implements Drawing {
    @Override
    public Scale scale() {
      return drawings.isEmpty() ? new Scale(1, "none") : drawings.get(0).drawing().scale();
    }

    @Override
    public Box extent() {
      return drawings.stream()
          .map(placed -> placed.drawing().extent().moved(placed.dx(), placed.dy()))
          .reduce(Box::with)
          .orElse(new Box(0, 0, 150, 20));
    }

    @Override
    public void paint(Surface surface) {
      if (drawings.isEmpty()) {
        surface.beginLayer(Layer.NOTE);
        surface.text(NOTHING, 2, 8, Lettering.NOTE, Align.LEFT);
        surface.endLayer();
      }
      drawings.forEach(
          placed -> placed.drawing().paint(new Moved(surface, placed.dx(), placed.dy())));
    }
  }
}
