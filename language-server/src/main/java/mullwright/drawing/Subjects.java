package mullwright.drawing;

import java.util.Locale;
import java.util.Optional;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PieceRef;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.SpliceJoint;
import mullwright.layout.VerticalPiece;
import mullwright.model.Grid;
import mullwright.model.Origin;

/** Says of pieces of a layout what a drawing says of them. */
public record Subjects(Labels labels) {
  private Subject subject(
      String kind, PieceRef.Kind list, int index, String name, Optional<Origin> origin) {
    PieceRef piece = new PieceRef(list, index);
    return new Subject(
        kind, Optional.of(piece), name, labels.mark(piece), origin.flatMap(labels::place));
  }

  public Subject of(VerticalPiece piece) {
    return subject(
        "vertical",
        PieceRef.Kind.VERTICAL,
        piece.index(),
        piece.name(),
        Optional.of(piece.origin()));
  }

  public Subject of(HorizontalPiece piece) {
    return subject(
        "horizontal",
        PieceRef.Kind.HORIZONTAL,
        piece.index(),
        piece.name(),
        Optional.of(piece.origin()));
  }

  public Subject of(SpliceJoint joint) {
    return subject(
        "splice",
        PieceRef.Kind.SPLICE,
        joint.index(),
        joint.name(),
        Optional.of(joint.splice().origin()));
  }

  /** Its kind is {@code dead-load}, {@code wind-load} or {@code clip}. */
  public Subject of(PlacedAnchor anchor) {
    return subject(
        "anchor " + anchor.use().kind().spelling(),
        PieceRef.Kind.ANCHOR,
        anchor.index(),
        anchor.name(),
        Optional.of(anchor.use().origin()));
  }

  /** Its kind is {@code vision}, {@code spandrel}, that of its opening, or {@code unfilled}. */
  public Subject of(Cell cell) {
    return subject(
        "cell " + kind(cell),
        PieceRef.Kind.CELL,
        cell.index(),
        cell.name(),
        cell.opening().map(Grid.Opening::origin).or(() -> cell.use().map(use -> use.origin())));
  }

  private static String kind(Cell cell) {
    return cell.opening()
        .map(opening -> opening.kind().name().toLowerCase(Locale.ROOT))
        .orElseGet(
            () -> cell.use().map(use -> use.vision() ? "vision" : "spandrel").orElse("unfilled"));
  }

  /** Something of the grid. */
  public Subject grid(String kind, String name, Origin origin) {
    return new Subject(kind, Optional.empty(), name, "", labels.place(origin));
  }
}
