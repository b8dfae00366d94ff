package mullwright.drawing.elevation;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import mullwright.drawing.DimensionString;
import mullwright.drawing.Layer;
import mullwright.drawing.Surface;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.VerticalPiece;
import mullwright.model.Grid;
import mullwright.quantity.Length;

/**
 * Dimension strings: below the frame daylight openings, lines, overall; to its left daylight
 * openings of the first bay, rows, floors, overall. The nearest to the frame is the finest.
 */
final class Dimensions implements ElevationPart {
  private static final double FIRST = 9;

  private final View view;

  Dimensions(View view) {
    this.view = view;
  }

  @Override
  public void paint(Surface surface) {
    surface.beginLayer(Layer.DIMENSION);
    strings(surface, false, widths(), view.around.bottom());
    strings(surface, true, heights(), view.around.left());
    surface.endLayer();
  }

  private void strings(
      Surface surface, boolean upright, List<List<DimensionString.Part>> strings, double edge) {
    double from = edge;
    // room that figures of the string before take
    double taken = 0;
    for (List<DimensionString.Part> parts : strings) {
      if (parts.isEmpty()) {
        continue;
      }
      DimensionString string = string(upright, 0, 0, parts);
      // above a level string, on the outer side of an upright one
      double beside = Math.max(string.beside(), upright ? 0 : string.above());
      double apart = Math.max(from == edge ? FIRST : DimensionString.PITCH, taken + beside + 1);
      // no extension line goes through figures of the string before
      string(upright, from - apart, from - taken, parts).paint(surface);
      taken = upright ? string.above() : 0;
      from -= apart;
    }
  }

  private static DimensionString string(
      boolean upright, double at, double from, List<DimensionString.Part> parts) {
    return upright
        ? DimensionString.upright(at, from, parts)
        : DimensionString.level(at, from, parts);
  }

  private List<List<DimensionString.Part>> widths() {
    TreeMap<Length, Length> openings = new TreeMap<>();
    for (Cell cell : view.layout.cells()) {
      if (cell.firstBay() == cell.lastBay()) {
        openings.putIfAbsent(cell.left(), cell.right());
      }
    }
    List<Length> lines =
        view.layout.wall().grid().lines().stream().map(Grid.Line::x).sorted().toList();
    TreeSet<Length> ends = new TreeSet<>();
    for (VerticalPiece piece : view.layout.verticals()) {
      Length half = piece.profile().face().value().half();
      ends.add(piece.x().minus(half));
      ends.add(piece.x().plus(half));
    }
    return List.of(apart(openings, false), chain(lines, false), overall(ends, false));
  }

  private List<List<DimensionString.Part>> heights() {
    TreeMap<Length, Length> openings = new TreeMap<>();
    int first =
        view.layout.cells().stream()
            .filter(cell -> view.showsX(view.p(cell.left())))
            .mapToInt(Cell::firstBay)
            .min()
            .orElse(0);
    for (Cell cell : view.layout.cells()) {
      if (cell.firstBay() == first && cell.rectangular()) {
        openings.putIfAbsent(cell.bottom(), cell.top());
      }
    }
    TreeSet<Length> rows = new TreeSet<>();
    TreeSet<Length> ends = new TreeSet<>();
    for (HorizontalPiece piece : view.layout.horizontals()) {
      Length half = piece.profile().face().value().half();
      if (piece.yLeft().equals(piece.yRight()) && view.showsX(view.p(piece.left()))) {
        rows.add(piece.yLeft());
      }
      ends.add(Length.min(piece.yLeft(), piece.yRight()).minus(half));
      ends.add(Length.max(piece.yLeft(), piece.yRight()).plus(half));
    }
    List<Length> floors =
        view.layout.wall().grid().floors().stream()
            .map(floor -> floor.elevation().value())
            .toList();
    return List.of(
        apart(openings, true),
        chain(List.copyOf(rows), true),
        chain(floors, true),
        overall(ends, true));
  }

  private boolean shows(double place, boolean upright) {
    return upright ? view.showsY(place) : view.showsX(place);
  }

  // parts that do not touch, each rounded by itself
  private List<DimensionString.Part> apart(TreeMap<Length, Length> openings, boolean upright) {
    List<DimensionString.Part> parts = new ArrayList<>();
    openings.forEach(
        (start, end) -> {
          double a = view.p(start);
          double b = view.p(end);
          if (shows(a, upright) && shows(b, upright)) {
            parts.add(new DimensionString.Part(a, b, view.figures.of(end.minus(start))));
          }
        });
    return parts;
  }

  private List<DimensionString.Part> chain(List<Length> places, boolean upright) {
    List<Length> shown =
        places.stream().filter(place -> shows(view.p(place), upright)).distinct().toList();
    List<String> figures = view.figures.chain(shown);
    List<DimensionString.Part> parts = new ArrayList<>();
    for (int i = 1; i < shown.size(); i++) {
      parts.add(
          new DimensionString.Part(
              view.p(shown.get(i - 1)), view.p(shown.get(i)), figures.get(i - 1)));
    }
    return parts;
  }

  private List<DimensionString.Part> overall(TreeSet<Length> ends, boolean upright) {
    return ends.size() < 2 ? List.of() : chain(List.of(ends.first(), ends.last()), upright);
  }
}
