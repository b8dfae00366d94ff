package mullwright.layout;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Finds the horizontal of a row in a bay, and so what a cell stands on. */
public final class RowPieces {
  /** By row, then by bay: a piece that crosses several bays stands in each; null for none. */
  private final HorizontalPiece[][] pieces;

  private RowPieces(int rows, int bays, List<HorizontalPiece> horizontals) {
    pieces = new HorizontalPiece[rows][bays];
    for (HorizontalPiece piece : horizontals) {
      Arrays.fill(pieces[piece.row()], piece.firstBay(), piece.lastBay() + 1, piece);
    }
  }

  /** Of a layout; made in time proportional to its rows and bays. */
  public static RowPieces of(WallLayout layout) {
    return new RowPieces(
        layout.wall().grid().rows().size(),
        layout.wall().grid().bays().size(),
        layout.horizontals());
  }

  /** The horizontal of that row that crosses that bay. */
  public Optional<HorizontalPiece> in(int row, int bay) {
    return Optional.ofNullable(pieces[row][bay]);
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
