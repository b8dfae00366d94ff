package mullwright.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;
import mullwright.drawing.Drawing;
import mullwright.drawing.Sheet;

/** The drawings of some walls, sheets numbered through. */
public final class DrawingSet {
  private final List<DrawnWall> walls;
  private final List<DrawingView> views;
  private final DrawingView.Wanted wanted;

  /** Of those walls, in that order; of each the views in that order. */
  public DrawingSet(List<DrawnWall> walls, List<DrawingView> views, DrawingView.Wanted wanted) {
    this.walls = List.copyOf(walls);
    this.views = List.copyOf(views);
    this.wanted = wanted;
  }

  /** Every kind of drawing there is, in the order of a set. */
  public static List<DrawingView> views() {
    return ServiceLoader.load(DrawingView.class).stream()
        .map(ServiceLoader.Provider::get)
        .sorted(Comparator.comparingInt(DrawingView::order).thenComparing(DrawingView::name))
        .toList();
  }

  /** The sheets, numbered. */
  public List<Sheet> sheets() {
    List<Sheet> all = new ArrayList<>();
    for (DrawnWall wall : walls) {
      for (DrawingView view : views) {
        all.addAll(view.sheets(wall, wanted));
      }
    }
    List<Sheet> numbered = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      numbered.add(all.get(i).of(i + 1, all.size()));
    }
    return numbered;
  }

  /** The same uncut, without sheets, each with a name for its file. */
  public List<Uncut> uncut() {
    List<Uncut> all = new ArrayList<>();
    for (DrawnWall wall : walls) {
      for (DrawingView view : views) {
        List<Drawing> drawings = view.uncut(wall, wanted);
        for (int i = 0; i < drawings.size(); i++) {
          String base = fileName(wall.layout().wall().name()) + "-" + view.name();
          String name = drawings.size() == 1 ? base : base + "-" + (i + 1);
          all.add(new Uncut(name, wall, drawings.get(i)));
        }
      }
    }
    return all;
  }

  /** A drawing without a sheet. */
  public record Uncut(String name, DrawnWall wall, Drawing drawing) {}

  /** A name that is safe as that of a file on any system. */
  public static String fileName(String name) {
    return name.replaceAll("[^A-Za-z0-9._-]+", "-").replaceFirst("^\\.+", "");
  }
}
