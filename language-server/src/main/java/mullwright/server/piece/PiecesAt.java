package mullwright.server.piece;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import mullwright.layout.PieceRef;
import mullwright.model.Reference;
import mullwright.model.Symbol;
import mullwright.workspace.Cursor;
import mullwright.workspace.NamedPieces;

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
      if (reference.symbol().kind() == Symbol.Kind.PART) {
        // it says what pieces are made of, not which are meant
        continue;
      }
      for (PieceRef piece : NamedPieces.of(wall.details(), reference.symbol())) {
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
}
