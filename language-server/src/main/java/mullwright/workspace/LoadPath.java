package mullwright.workspace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import mullwright.analysis.wall.WallAnalysis;
import mullwright.analysis.wall.WeightLanding;
import mullwright.check.WallFacts;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.LayoutIndex;
import mullwright.layout.PieceRef;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.RowPieces;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;

/**
 * How weight goes through a wall, piece by piece: a lite stands on the horizontal under it, a
 * horizontal on the verticals at its ends and under it, a length of vertical hangs from its
 * anchors, or stands on a horizontal or hangs from one. A length nothing holds up slides down on
 * the one below.
 *
 * <p>Anchors that only hold in and out stand at the end of the path too: they take the wind of what
 * the length carries. Splices and covers hand nothing on.
 */
public final class LoadPath {
  private final WallLayout layout;
  private final Map<PieceRef, List<PieceRef>> onto = new LinkedHashMap<>();
  private final Map<PieceRef, List<PieceRef>> from = new LinkedHashMap<>();

  private LoadPath(WallFacts facts, LayoutIndex index) {
    this.layout = facts.layout();
    RowPieces rows = RowPieces.of(layout);
    layout.cells().forEach(cell -> lite(cell, rows, index));
    layout.horizontals().forEach(piece -> horizontal(piece, index, facts.analysis()));
    layout.verticals().forEach(piece -> vertical(piece, facts.analysis()));
  }

  /** The load path of a wall. */
  static LoadPath of(WallFacts facts, LayoutIndex index) {
    return new LoadPath(facts, index);
  }

  /** What a piece hands its load on to; none for an anchor, where the path leaves the wall. */
  public List<PieceRef> onto(PieceRef piece) {
    return List.copyOf(onto.getOrDefault(piece, List.of()));
  }

  /** What hands its load on to a piece, in the order of the layout. */
  public List<PieceRef> from(PieceRef piece) {
    return List.copyOf(from.getOrDefault(piece, List.of()));
  }

  /** The lites and fillings whose weight comes to any of those pieces, each once. */
  public List<Cell> lites(List<PieceRef> pieces) {
    Set<PieceRef> met = new LinkedHashSet<>(pieces);
    List<PieceRef> open = new ArrayList<>(pieces);
    List<Cell> lites = new ArrayList<>();
    while (!open.isEmpty()) {
      PieceRef piece = open.remove(open.size() - 1);
      if (piece.kind() == PieceRef.Kind.CELL) {
        lites.add(layout.cells().get(piece.index()));
      }
      for (PieceRef above : from.getOrDefault(piece, List.of())) {
        if (met.add(above)) {
          open.add(above);
        }
      }
    }
    return lites;
  }

  private void lite(Cell cell, RowPieces rows, LayoutIndex index) {
    if (cell.use().isEmpty() && cell.opening().isEmpty()) {
      return;
    }
    PieceRef lite = new PieceRef(PieceRef.Kind.CELL, cell.index());
    // a door that stands on the floor has no row under it
    Optional<HorizontalPiece> under = rows.under(cell);
    if (under.isPresent()) {
      link(lite, new PieceRef(PieceRef.Kind.HORIZONTAL, under.get().index()));
      return;
    }
    Grid grid = layout.wall().grid();
    for (int line :
        List.of(grid.bays().get(cell.firstBay()).left(), grid.bays().get(cell.lastBay()).right())) {
      index
          .verticalAt(line, cell.bottom())
          .ifPresent(beside -> link(lite, new PieceRef(PieceRef.Kind.VERTICAL, beside.index())));
    }
  }

  private void horizontal(HorizontalPiece piece, LayoutIndex index, WallAnalysis analysis) {
    PieceRef horizontal = new PieceRef(PieceRef.Kind.HORIZONTAL, piece.index());
    index
        .verticalAt(piece.leftLine(), piece.yLeft())
        .ifPresent(left -> link(horizontal, new PieceRef(PieceRef.Kind.VERTICAL, left.index())));
    index
        .verticalAt(piece.rightLine(), piece.yRight())
        .ifPresent(right -> link(horizontal, new PieceRef(PieceRef.Kind.VERTICAL, right.index())));
    for (VerticalPiece under : analysis.under(piece)) {
      link(horizontal, new PieceRef(PieceRef.Kind.VERTICAL, under.index()));
    }
  }

  private void vertical(VerticalPiece piece, WallAnalysis analysis) {
    PieceRef vertical = new PieceRef(PieceRef.Kind.VERTICAL, piece.index());
    for (PlacedAnchor anchor : analysis.anchorsOn(piece)) {
      link(vertical, new PieceRef(PieceRef.Kind.ANCHOR, anchor.index()));
    }
    WeightLanding landing = analysis.holdOf(piece).landing();
    if (landing instanceof WeightLanding.OnHorizontal on) {
      link(vertical, new PieceRef(PieceRef.Kind.HORIZONTAL, on.support().horizontal()));
    } else if (landing instanceof WeightLanding.OnClosedJoint on) {
      link(vertical, new PieceRef(PieceRef.Kind.VERTICAL, on.below().index()));
    }
  }

  private void link(PieceRef piece, PieceRef holds) {
    onto.computeIfAbsent(piece, any -> new ArrayList<>()).add(holds);
    from.computeIfAbsent(holds, any -> new ArrayList<>()).add(piece);
  }
}
