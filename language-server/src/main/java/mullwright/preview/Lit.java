package mullwright.preview;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.layout.PieceRef;
import mullwright.model.Origin;
import mullwright.model.Reference;
import mullwright.syntax.Statement;
import mullwright.workspace.Cursor;
import mullwright.workspace.NamedPieces;

/** The pieces of one wall that a place of the text stands for. */
record Lit(SceneWall wall) {
  /**
   * Those that a name under the cursor stands for; where there is no name, those the statement
   * made. A whole block stands for none: all lit is none lit.
   */
  Set<PieceRef> under(Stage.CursorAt at) {
    Set<PieceRef> found = new LinkedHashSet<>();
    Optional<Cursor> cursor =
        at.key().equals(wall.file().key())
            ? wall.file().snapshot().cursor(at.path(), at.offset())
            : Optional.empty();
    if (cursor.isEmpty()) {
      return found;
    }
    boolean definition = false;
    for (Reference reference : cursor.get().references()) {
      definition |= reference.definition();
      found.addAll(NamedPieces.of(wall.details(), reference.symbol()));
    }
    if (found.isEmpty() || !definition) {
      cursor
          .get()
          .statement()
          .filter(statement -> statement.block().isEmpty())
          .ifPresent(statement -> keep(found, madeBy(cursor.get(), statement)));
    }
    return found;
  }

  /**
   * A name in a statement narrows what the statement made; if nothing is left, all of it counts.
   */
  private static void keep(Set<PieceRef> found, Set<PieceRef> made) {
    Set<PieceRef> both = new LinkedHashSet<>(found);
    both.retainAll(made);
    if (!made.isEmpty()) {
      found.clear();
      found.addAll(both.isEmpty() ? made : both);
    }
  }

  private Set<PieceRef> madeBy(Cursor cursor, Statement statement) {
    return seen(
        wall.details()
            .index()
            .touching(new Origin(cursor.path(), cursor.segment(), statement.range())));
  }

  private static Set<PieceRef> seen(List<PieceRef> pieces) {
    Set<PieceRef> seen = new LinkedHashSet<>(pieces);
    // plates and caps lie on members that are lit already
    seen.removeIf(piece -> piece.kind() == PieceRef.Kind.COVER);
    return seen;
  }
}
