package mullwright.analysis.wall;

import java.util.Arrays;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;

/** The horizontal of each row in each bay. */
final class RowPieces {
  private final HorizontalPiece[][] pieces;

  RowPieces(WallLayout layout) {
    Grid grid = layout.wall().grid();
    pieces = new HorizontalPiece[grid.rows().size()][grid.bays().size()];
    for (HorizontalPiece piece : layout.horizontals()) {
      Arrays.fill(pieces[piece.row()], piece.firstBay(), piece.lastBay() + 1, piece);
    }
  }

  /** The horizontal of a row in a bay; null if none is there. */
  HorizontalPiece in(int row, int bay) {
    return row < 0 || row >= pieces.length ? null : pieces[row][bay];
  }
}
