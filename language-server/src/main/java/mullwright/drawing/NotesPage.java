package mullwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Notes in columns, for a sheet of their own. */
public final class NotesPage implements Drawing {
  private static final double COLUMN = 110;
  private static final double GAP = 10;

  private final Box room;
  private final List<Panel> panels;

  /** As much of the panels as that room takes. */
  public NotesPage(Box room, List<Panel> panels) {
    this.room = room;
    this.panels = List.copyOf(panels);
  }

  @Override
  public String title() {
    return "Notes";
  }

  @Override
  public Scale scale() {
    return new Scale(1, "none");
  }

  @Override
  public Box extent() {
    return room;
  }

  /** What finds no room in it. */
  public List<Panel> overflow() {
    return columns(new Measuring());
  }

  @Override
  public void paint(Surface surface) {
    surface.beginLayer(Layer.NOTE);
    columns(surface);
    surface.endLayer();
  }

  private List<Panel> columns(Surface surface) {
    int count = Math.max(1, (int) ((room.width() + GAP) / (COLUMN + GAP)));
    double width = (room.width() - (count - 1) * GAP) / count;
    List<Panel> left = new ArrayList<>(panels);
    for (int column = 0; column < count && !left.isEmpty(); column++) {
      double x = room.left() + column * (width + GAP);
      double y = room.top();
      while (!left.isEmpty()) {
        Panel panel = left.remove(0);
        Panel.Rest rest = panel.paint(surface, x, y, width, room.bottom());
        y = rest.y();
        if (!rest.rows().isEmpty()) {
          left.add(0, new Panel(panel.heading(), rest.rows()));
          break;
        }
      }
    }
    return left;
  }
}
