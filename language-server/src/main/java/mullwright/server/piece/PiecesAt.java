package mullwright.server.piece;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import mullwright.layout.PieceRef;
import mullwright.model.Grid;
import mullwright.model.Reference;
import mullwright.model.Symbol;
import mullwright.workspace.Cursor;

/**
 * The pieces that are meant at a place of the text: those the statement there made; on the name of
 * a line or a row, only those of them that stand there.
 */
public final class PiecesAt {
  private PiecesAt() {}

  /** The pieces of a wall that are meant under a cursor, in the order of the layout. */
  public static List<PieceRef> of(WallPieces wall, Cursor cursor) {
    List<PieceRef> made = wall.madeAround(cursor);
    Set<PieceRef> there = new HashSet<>();
    List<PieceRef> inOrder = new ArrayList<>();
    for (Reference reference : cursor.references()) {
      for (PieceRef piece : at(wall, reference.symbol())) {
        if (there.add(piece)) {
          inOrder.add(piece);
        }
      }
    }
    if (made.isEmpty()) {
      return inOrder;
    }
    List<PieceRef> both = made.stream().filter(there::contains).toList();
    return both.isEmpty() ? made : both;
  }

  /** The pieces of a wall that stand on a line or lie on a row of it. */
  public static List<PieceRef> at(WallPieces wall, Symbol symbol) {
    List<PieceRef> pieces = new ArrayList<>();
    if (symbol.scope().equals(wall.name())) {
      Grid grid = wall.layout().wall().grid();
      if (symbol.kind() == Symbol.Kind.LINE) {
        grid.lines().stream()
            .filter(line -> line.name().equals(symbol.name()))
            .forEach(line -> pieces.addAll(wall.index().onLine(line.index())));
      } else if (symbol.kind() == Symbol.Kind.ROW) {
        grid.rows().stream()
            .filter(row -> row.name().equals(symbol.name()) || row.base().equals(symbol.name()))
            .forEach(row -> pieces.addAll(wall.index().onRow(row.index())));
      }
    }
    pieces.removeIf(piece -> piece.kind() == PieceRef.Kind.COVER);
    return pieces;
  }
}
