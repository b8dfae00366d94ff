package mullwright.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds the horizontal of a row in a bay, and so what a cell stands on. */
public final class RowPieces {
  private final List<List<HorizontalPiece>> byRow;

  private RowPieces(WallLayout layout) {
    byRow = new ArrayList<>(layout.wall().grid().rows().size());
    layout.wall().grid().rows().forEach(row -> byRow.add(new ArrayList<>()));
    layout.horizontals().forEach(piece -> byRow.get(piece.row()).add(piece));
  }

  /** Of a layout, whose rows list their pieces from the left. */
  public static RowPieces of(WallLayout layout) {
    return new RowPieces(layout);
  }

  /** The horizontal of that row that crosses that bay. */
  public Optional<HorizontalPiece> in(int row, int bay) {
    List<HorizontalPiece> pieces = byRow.get(row);
    int low = 0;
    int high = pieces.size() - 1;
    while (low <= high) {
      int middle = (low + high) >>> 1;
      HorizontalPiece piece = pieces.get(middle);
      if (piece.lastBay() < bay) {
        low = middle + 1;
      } else if (piece.firstBay() > bay) {
        high = middle - 1;
      } else {
        return Optional.of(piece);
      }
    }
    return Optional.empty();
  }

  /** The horizontal under a cell, if one bounds it from below. */
  public Optional<HorizontalPiece> under(Cell cell) {
    return cell.below() < 0 ? Optional.empty() : in(cell.below(), cell.firstBay());
  }

  /** The horizontal over a cell, if one bounds it from above. */
  public Optional<HorizontalPiece> over(Cell cell) {
    return cell.above() < 0 ? Optional.empty() : in(cell.above(), cell.firstBay());
  }
}
