package mullwright.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.layout.Cell;
import mullwright.model.Grid;

/** The bays of openings between the same rows, as a statement names them. */
record BayRanges(Grid grid) {

  /**
   * The bays in as few ranges as there are: {@code A..C, E..F}.
   *
   * @param cells from left to right
   */
  String of(List<Cell> cells) {
    List<String> ranges = new ArrayList<>();
    int from = -1;
    int to = -1;
    for (Cell cell : cells) {
      int left = grid.bays().get(cell.firstBay()).left();
      if (left != to) {
        range(from, to).ifPresent(ranges::add);
        from = left;
      }
      to = grid.bays().get(cell.lastBay()).right();
    }
    range(from, to).ifPresent(ranges::add);
    return String.join(", ", ranges);
  }

  /** The clauses that name some openings: {@code rows sill..rail bays A..C}. */
  String clauses(List<Cell> cells) {
    Cell first = cells.get(0);
    return "rows "
        + Words.asName(grid.rows().get(first.below()).name())
        + ".."
        + Words.asName(grid.rows().get(first.above()).name())
        + " bays "
        + of(cells);
  }

  private Optional<String> range(int from, int to) {
    return from < 0
        ? Optional.empty()
        : Optional.of(
            Words.asName(grid.lines().get(from).name())
                + ".."
                + Words.asName(grid.lines().get(to).name()));
  }
}
