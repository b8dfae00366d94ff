package mullwright.analysis.wall;

import java.util.List;
import mullwright.layout.Cell;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;

/** Where the centre of each line's vertical is along the wall [m], and how wide that makes bays. */
final class LineCentres {
  private final double[] x;
  private final List<Grid.Bay> bays;

  LineCentres(WallLayout layout) {
    Grid grid = layout.wall().grid();
    bays = grid.bays();
    x = new double[grid.lines().size()];
    for (Grid.Line line : grid.lines()) {
      x[line.index()] = line.x().toMetres();
    }
    // a line may be stated by the outer edge of its member's face
    for (VerticalPiece piece : layout.verticals()) {
      x[piece.line()] = piece.x().toMetres();
    }
  }

  double of(int line) {
    return x[line];
  }

  double left(Cell cell) {
    return x[bays.get(cell.firstBay()).left()];
  }

  double right(Cell cell) {
    return x[bays.get(cell.lastBay()).right()];
  }

  /** Centre to centre of the verticals on either side of a cell [m]. */
  double width(Cell cell) {
    return right(cell) - left(cell);
  }
}
