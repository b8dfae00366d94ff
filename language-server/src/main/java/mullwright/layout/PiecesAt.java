package mullwright.layout;

import java.util.ArrayList;
import java.util.List;
import mullwright.quantity.Length;

/** Tells which pieces are seen at a place of the elevation, such as under a click on a drawing. */
public final class PiecesAt {
  private PiecesAt() {}

  /** What is seen at a place of the elevation: members before what they frame. */
  public static List<PieceRef> at(WallLayout layout, Length x, Length y) {
    List<PieceRef> seen = new ArrayList<>();
    for (VerticalPiece piece : layout.verticals()) {
      Length half = piece.profile().face().value().half();
      if (between(piece.x().minus(half), x, piece.x().plus(half))
          && between(piece.bottom(), y, piece.top())) {
        seen.add(new PieceRef(PieceRef.Kind.VERTICAL, piece.index()));
      }
    }
    for (HorizontalPiece piece : layout.horizontals()) {
      Length half = piece.profile().face().value().half();
      if (between(piece.left(), x, piece.right())) {
        Length rise = piece.yRight().minus(piece.yLeft());
        Length run = piece.right().minus(piece.left());
        Length centre = piece.yLeft().plus(rise.scaled(x.minus(piece.left()).ticks(), run.ticks()));
        if (between(centre.minus(half), y, centre.plus(half))) {
          seen.add(new PieceRef(PieceRef.Kind.HORIZONTAL, piece.index()));
        }
      }
    }
    for (Cell cell : layout.cells()) {
      if (between(cell.left(), x, cell.right()) && between(cell.bottom(), y, cell.top())) {
        seen.add(new PieceRef(PieceRef.Kind.CELL, cell.index()));
      }
    }
    return seen;
  }

  private static boolean between(Length from, Length at, Length to) {
    return !at.isShorterThan(from) && !at.isLongerThan(to);
  }
}
