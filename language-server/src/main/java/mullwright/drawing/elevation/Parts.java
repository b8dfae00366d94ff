package mullwright.drawing.elevation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.drawing.Box;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;

/**
 * The parts an elevation is cut into, in columns and storeys, from the lower left.
 *
 * @param xs edges of the columns, {@code ys} of the storeys, in millimetres of the wall
 * @param windows one a part, a storey after the other
 */
record Parts(List<Double> xs, List<Double> ys, List<Window> windows) {
  int columns() {
    return xs.size() - 1;
  }

  static Parts of(
      WallLayout layout,
      ElevationOptions options,
      Elevation whole,
      Box margins,
      Box room,
      double lap) {
    double ratio = options.scale().ratio();
    Map<Double, String> lines = new HashMap<>();
    List<Double> lineAt = new ArrayList<>();
    for (Grid.Line line : layout.wall().grid().lines()) {
      lines.put(line.x().toMillimetres(), line.name());
      lineAt.add(line.x().toMillimetres());
    }
    Map<Double, String> floors = new HashMap<>();
    List<Double> floorAt = new ArrayList<>();
    for (Grid.Floor floor : layout.wall().grid().floors()) {
      floors.put(floor.elevation().value().toMillimetres(), floor.name());
      floorAt.add(floor.elevation().value().toMillimetres());
    }
    Box frame = whole.frame();
    // a part has a lap, a line of words and perhaps a longer name at either end
    double spare = 2 * lap + 16;
    double wide = room.width() - margins.width();
    double high = room.height() - margins.height();
    List<Double> xs =
        edges(
            frame.left() * ratio,
            frame.right() * ratio,
            lineAt,
            (frame.width() <= wide ? wide : wide - spare) * ratio);
    List<Double> ys =
        edges(
            frame.bottom() * ratio,
            frame.top() * ratio,
            floorAt,
            (frame.height() <= high ? high : high - spare) * ratio);
    List<Window> windows = new ArrayList<>();
    int columns = xs.size() - 1;
    for (int storey = 0; storey + 1 < ys.size(); storey++) {
      for (int column = 0; column < columns; column++) {
        int number = storey * columns + column + 1;
        Optional<Window.Match> left = match(xs, column, lines, number - 1);
        Optional<Window.Match> right = match(xs, column + 1, lines, number + 1);
        Optional<Window.Match> bottom = match(ys, storey, floors, number - columns);
        Optional<Window.Match> top = match(ys, storey + 1, floors, number + columns);
        Box shown =
            new Box(
                left.map(it -> it.at() - lap * ratio).orElse(Double.NEGATIVE_INFINITY),
                bottom.map(it -> it.at() - lap * ratio).orElse(Double.NEGATIVE_INFINITY),
                right.map(it -> it.at() + lap * ratio).orElse(Double.POSITIVE_INFINITY),
                top.map(it -> it.at() + lap * ratio).orElse(Double.POSITIVE_INFINITY));
        windows.add(new Window(number, columns * (ys.size() - 1), shown, left, right, bottom, top));
      }
    }
    return new Parts(xs, ys, windows);
  }

  private static List<Double> edges(double start, double end, List<Double> places, double most) {
    List<Double> edges = new ArrayList<>();
    edges.add(start);
    edges.addAll(Cuts.of(start, end, places.stream().sorted().distinct().toList(), most));
    edges.add(end);
    return edges;
  }

  private static Optional<Window.Match> match(
      List<Double> edges, int at, Map<Double, String> names, int part) {
    return at == 0 || at == edges.size() - 1
        ? Optional.empty()
        : Optional.of(new Window.Match(edges.get(at), names.get(edges.get(at)), part));
  }
}
