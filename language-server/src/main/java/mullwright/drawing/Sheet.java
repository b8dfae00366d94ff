package mullwright.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A sheet: a border, a strip at its right with notes and the title block, and drawings on what is
 * left. Its paper begins at the lower left corner. Source: ISO 5457, a filing margin of 20 mm on
 * the left and 10 mm elsewhere (from memory).
 *
 * @param title of what it shows
 * @param scale of its main drawing
 * @param number from 1, {@code count} how many there are in the set
 * @param drawings each with where the origin of its paper comes to lie
 * @param panels notes and legends, from the top of the strip; what finds no room is left to {@link
 *     #overflow()}
 */
public record Sheet(
    Paper paper,
    TitleBlock titleBlock,
    String title,
    Scale scale,
    int number,
    int count,
    List<Placed> drawings,
    List<Panel> panels)
    implements Drawing {
  private static final double FILING = 20;
  private static final double MARGIN = 10;
  private static final double PADDING = 4;

  public Sheet {
    drawings = List.copyOf(drawings);
    panels = List.copyOf(panels);
  }

  /** A drawing, moved so far. */
  public record Placed(Drawing drawing, double dx, double dy) {
    /** In the middle of a room. */
    public static Placed centred(Drawing drawing, Box room) {
      Box extent = drawing.extent();
      return new Placed(
          drawing, room.middleX() - extent.middleX(), room.middleY() - extent.middleY());
    }
  }

  private static Box border(Paper paper) {
    return new Box(FILING, MARGIN, paper.width() - MARGIN, paper.height() - MARGIN);
  }

  private static double strip(Paper paper) {
    return paper.width() < 500 ? 68 : 96;
  }

  /** The room for drawings on a sheet of that paper. */
  public static Box room(Paper paper) {
    Box border = border(paper);
    return new Box(border.left(), border.bottom(), border.right() - strip(paper), border.top())
        .grown(-PADDING);
  }

  /** The same sheet, one of so many. */
  public Sheet of(int newNumber, int newCount) {
    return new Sheet(paper, titleBlock, title, scale, newNumber, newCount, drawings, panels);
  }

  @Override
  public Box extent() {
    return new Box(0, 0, paper.width(), paper.height());
  }

  @Override
  public boolean bordered() {
    return true;
  }

  /** What of its panels finds no room on it. */
  public List<Panel> overflow() {
    return panels(new Measuring());
  }

  @Override
  public void paint(Surface surface) {
    Box border = border(paper);
    double x = border.right() - strip(paper);
    surface.beginLayer(Layer.SHEET);
    surface.box(border, Pen.BORDER, null);
    surface.line(x, border.bottom(), x, border.top(), Pen.CUT);
    titleBlock.paint(
        surface,
        x,
        border.bottom(),
        strip(paper),
        new TitleBlock.Fields(title, scale.words(), number + " of " + count, paper.name()));
    surface.endLayer();
    for (Placed placed : drawings) {
      placed.drawing().paint(new Moved(surface, placed.dx(), placed.dy()));
    }
    surface.beginLayer(Layer.NOTE);
    panels(surface);
    surface.endLayer();
  }

  private List<Panel> panels(Surface surface) {
    Box border = border(paper);
    double width = strip(paper) - 2 * PADDING;
    double x = border.right() - strip(paper) + PADDING;
    double bottom = border.bottom() + titleBlock.height(strip(paper)) + PADDING;
    double y = border.top() - PADDING;
    List<Panel> left = new ArrayList<>();
    for (Panel panel : panels) {
      if (!left.isEmpty()) {
        left.add(panel);
        continue;
      }
      Panel.Rest rest = panel.paint(surface, x, y, width, bottom);
      y = rest.y();
      if (!rest.rows().isEmpty()) {
        left.add(new Panel(panel.heading(), rest.rows()));
      }
    }
    return left;
  }
}
