package mullwright.preview;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.layout.Cell;
import mullwright.layout.LayoutIndex;
import mullwright.layout.PieceRef;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;
import mullwright.model.Origin;
import mullwright.model.Reference;
import mullwright.model.Symbol;
import mullwright.syntax.Statement;
import mullwright.workspace.Cursor;

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
      found.addAll(of(reference.symbol()));
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

  private Set<PieceRef> of(Symbol symbol) {
    LayoutIndex index = wall.details().index();
    Grid grid = wall.layout().wall().grid();
    Set<PieceRef> found = new LinkedHashSet<>();
    if (symbol.kind() == Symbol.Kind.PART) {
      found.addAll(madeOf(symbol.name()));
    } else if (symbol.scope().equals(wall.name())) {
      for (Grid.Line line : grid.lines()) {
        if (symbol.kind() == Symbol.Kind.LINE && line.name().equals(symbol.name())) {
          found.addAll(seen(index.onLine(line.index())));
        }
      }
      for (Grid.Row row : grid.rows()) {
        boolean named = row.name().equals(symbol.name()) || row.base().equals(symbol.name());
        if (symbol.kind() == Symbol.Kind.ROW && named) {
          found.addAll(seen(index.onRow(row.index())));
        }
      }
      for (Cell cell : wall.layout().cells()) {
        boolean named =
            cell.opening().filter(opening -> opening.name().equals(symbol.name())).isPresent();
        if (symbol.kind() == Symbol.Kind.OPENING && named) {
          found.add(new PieceRef(PieceRef.Kind.CELL, cell.index()));
        }
      }
    }
    return found;
  }

  /** The pieces made of a part of the catalog. */
  private Set<PieceRef> madeOf(String part) {
    WallLayout layout = wall.layout();
    Set<PieceRef> found = new LinkedHashSet<>();
    layout.verticals().stream()
        .filter(piece -> piece.profile().name().equals(part))
        .forEach(piece -> found.add(new PieceRef(PieceRef.Kind.VERTICAL, piece.index())));
    layout.horizontals().stream()
        .filter(piece -> piece.profile().name().equals(part))
        .forEach(piece -> found.add(new PieceRef(PieceRef.Kind.HORIZONTAL, piece.index())));
    layout.anchors().stream()
        .filter(piece -> piece.part().filter(is -> is.name().equals(part)).isPresent())
        .forEach(piece -> found.add(new PieceRef(PieceRef.Kind.ANCHOR, piece.index())));
    layout.cells().stream()
        .filter(cell -> cell.use().filter(use -> use.glass().value().equals(part)).isPresent())
        .forEach(cell -> found.add(new PieceRef(PieceRef.Kind.CELL, cell.index())));
    return found;
  }

  private static Set<PieceRef> seen(List<PieceRef> pieces) {
    Set<PieceRef> seen = new LinkedHashSet<>(pieces);
    // plates and caps lie on members that are lit already
    seen.removeIf(piece -> piece.kind() == PieceRef.Kind.COVER);
    return seen;
  }
}
