package mullwright.workspace;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import mullwright.layout.Cell;
import mullwright.layout.LayoutIndex;
import mullwright.layout.PieceRef;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;
import mullwright.model.Symbol;

/**
 * The pieces of a wall that a name stands for: those on a line, those of a row, the cells of an
 * opening, what is made of a part. Plates and caps lie on members that are named already and are
 * left out.
 */
public final class NamedPieces {
  private NamedPieces() {}

  /** Those that a name stands for, in the order of the layout. */
  public static Set<PieceRef> of(WallDetails details, Symbol symbol) {
    WallLayout layout = details.layout();
    Set<PieceRef> found = new LinkedHashSet<>();
    if (symbol.kind() == Symbol.Kind.PART) {
      madeOf(layout, symbol.name(), found);
    } else if (symbol.scope().equals(layout.wall().name())) {
      inGrid(details, symbol, found);
    }
    return found;
  }

  private static void inGrid(WallDetails details, Symbol symbol, Set<PieceRef> found) {
    LayoutIndex index = details.index();
    Grid grid = details.layout().wall().grid();
    switch (symbol.kind()) {
      case LINE ->
          grid.lines().stream()
              .filter(line -> line.name().equals(symbol.name()))
              .forEach(line -> add(index.onLine(line.index()), found));
      case ROW ->
          grid.rows().stream()
              .filter(row -> row.name().equals(symbol.name()) || row.base().equals(symbol.name()))
              .forEach(row -> add(index.onRow(row.index()), found));
      case OPENING ->
          details.layout().cells().stream()
              .filter(
                  cell -> cell.opening().filter(it -> it.name().equals(symbol.name())).isPresent())
              .forEach(cell -> found.add(new PieceRef(PieceRef.Kind.CELL, cell.index())));
      default -> {
        // other names stand for no piece
      }
    }
  }

  private static void add(List<PieceRef> pieces, Set<PieceRef> found) {
    for (PieceRef piece : pieces) {
      if (piece.kind() != PieceRef.Kind.COVER) {
        found.add(piece);
      }
    }
  }

  private static void madeOf(WallLayout layout, String part, Set<PieceRef> found) {
    layout.verticals().stream()
        .filter(piece -> piece.profile().name().equals(part))
        .forEach(piece -> found.add(new PieceRef(PieceRef.Kind.VERTICAL, piece.index())));
    layout.horizontals().stream()
        .filter(piece -> piece.profile().name().equals(part))
        .forEach(piece -> found.add(new PieceRef(PieceRef.Kind.HORIZONTAL, piece.index())));
    layout.anchors().stream()
        .filter(anchor -> anchor.part().filter(is -> is.name().equals(part)).isPresent())
        .forEach(anchor -> found.add(new PieceRef(PieceRef.Kind.ANCHOR, anchor.index())));
    for (Cell cell : layout.cells()) {
      if (cell.use().filter(use -> use.glass().value().equals(part)).isPresent()) {
        found.add(new PieceRef(PieceRef.Kind.CELL, cell.index()));
      }
    }
  }
}
