package mullwright.report;

import java.util.ArrayList;
import java.util.List;
import mullwright.derivation.Derivation;
import mullwright.layout.Cell;
import mullwright.layout.LengthTrace;
import mullwright.layout.PieceMarks;
import mullwright.layout.PieceRef;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.WallLayout;
import mullwright.model.Part;

/** The numbers of a piece that can be traced. */
final class Traces {
  private final WallLayout layout;
  private final LengthTrace trace;
  private final PieceMarks marks;

  Traces(WallLayout layout) {
    this.layout = layout;
    this.trace = LengthTrace.of(layout);
    this.marks = PieceMarks.of(layout);
  }

  /** Every piece of the layout. */
  List<PieceRef> all() {
    List<PieceRef> all = new ArrayList<>();
    add(all, PieceRef.Kind.VERTICAL, layout.verticals().size());
    add(all, PieceRef.Kind.HORIZONTAL, layout.horizontals().size());
    add(all, PieceRef.Kind.ANCHOR, layout.anchors().size());
    add(all, PieceRef.Kind.CELL, layout.cells().size());
    add(all, PieceRef.Kind.COVER, layout.covers().size());
    return all;
  }

  private static void add(List<PieceRef> all, PieceRef.Kind kind, int count) {
    for (int at = 0; at < count; at++) {
      all.add(new PieceRef(kind, at));
    }
  }

  /** Equal pieces have the same; empty for a piece that has no mark. */
  String mark(PieceRef piece) {
    return marks.mark(piece);
  }

  /** Pieces told together have the same: equal marks, or anchors and splices of one kind. */
  String likeness(PieceRef piece) {
    return switch (piece.kind()) {
      case SPLICE -> "splice";
      case ANCHOR -> {
        PlacedAnchor anchor = layout.anchors().get(piece.index());
        yield anchor.use().kind() + anchor.part().map(Part.Anchor::name).orElse("");
      }
      default -> {
        String mark = mark(piece);
        yield mark.isEmpty() ? piece.toString() : mark;
      }
    };
  }

  /** Its numbers, most wanted first. */
  List<Derivation> of(PieceRef piece) {
    return switch (piece.kind()) {
      case VERTICAL -> List.of(trace.vertical(layout.verticals().get(piece.index())));
      case HORIZONTAL -> List.of(trace.horizontal(layout.horizontals().get(piece.index())));
      case COVER -> List.of(trace.cover(layout.covers().get(piece.index())));
      case ANCHOR -> List.of(trace.height(layout.anchors().get(piece.index())));
      case CELL -> {
        Cell cell = layout.cells().get(piece.index());
        boolean glass = cell.use().isPresent() && cell.opening().isEmpty();
        yield glass
            ? List.of(trace.glassWidth(cell), trace.glassHeight(cell))
            : List.of(trace.daylightWidth(cell), trace.daylightHeight(cell));
      }
      case SPLICE -> List.of();
    };
  }
}
