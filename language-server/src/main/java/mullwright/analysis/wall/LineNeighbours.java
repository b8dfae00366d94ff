package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToIntFunction;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;
import mullwright.quantity.Length;

/**
 * What meets each grid line: the horizontals that end on it, the cells beside it, its anchors; and
 * the anchors of each length of vertical.
 */
final class LineNeighbours {
  private final List<List<HorizontalPiece>> horizontals;
  private final List<List<Cell>> cells;
  private final List<List<PlacedAnchor>> anchors;
  private final List<List<PlacedAnchor>> anchorsOn;
  private final Length widestHalfFace;

  LineNeighbours(WallLayout layout) {
    Grid grid = layout.wall().grid();
    int lines = grid.lines().size();
    horizontals = byLine(lines, layout.horizontals(), h -> h.leftLine(), h -> h.rightLine());
    cells =
        byLine(
            lines,
            layout.cells(),
            cell -> grid.bays().get(cell.firstBay()).left(),
            cell -> grid.bays().get(cell.lastBay()).right());
    anchors = byLine(lines, layout.anchors(), anchor -> anchor.use().line());
    List<PlacedAnchor> holding =
        layout.anchors().stream().filter(anchor -> anchor.vertical() >= 0).toList();
    anchorsOn = byLine(layout.verticals().size(), holding, PlacedAnchor::vertical);
    Length widest = Length.ZERO;
    for (HorizontalPiece horizontal : layout.horizontals()) {
      widest = Length.max(widest, horizontal.profile().face().value());
    }
    widestHalfFace = widest.half();
  }

  @SafeVarargs
  private static <T> List<List<T>> byLine(int lines, List<T> things, ToIntFunction<T>... ends) {
    List<List<T>> lists = new ArrayList<>(lines);
    for (int line = 0; line < lines; line++) {
      lists.add(new ArrayList<>());
    }
    for (T thing : things) {
      for (ToIntFunction<T> end : ends) {
        lists.get(end.applyAsInt(thing)).add(thing);
      }
    }
    lists.replaceAll(List::copyOf);
    return lists;
  }

  /** Half the widest face of all horizontals. */
  Length widestHalfFace() {
    return widestHalfFace;
  }

  /** In the order of the layout: by row. */
  List<HorizontalPiece> horizontals(int line) {
    return horizontals.get(line);
  }

  /** In the order of the layout: by bay, then from below. */
  List<Cell> cells(int line) {
    return cells.get(line);
  }

  /** From below. */
  List<PlacedAnchor> anchors(int line) {
    return anchors.get(line);
  }

  /** Those that hold a length of vertical, from below. */
  List<PlacedAnchor> anchorsOn(int vertical) {
    return anchorsOn.get(vertical);
  }
}
