package mullwright.layout;

import java.util.List;
import mullwright.quantity.Length;

/** Finds the length of vertical at a height of a line. */
public final class VerticalsOnLine {
  private final List<VerticalPiece> verticals;
  private final int[] first;

  /** Of a layout, whose verticals stand by line, then from below. */
  public VerticalsOnLine(WallLayout layout) {
    verticals = layout.verticals();
    first = new int[layout.wall().grid().lines().size() + 1];
    for (VerticalPiece piece : verticals) {
      first[piece.line() + 1] = piece.index() + 1;
    }
    for (int line = 1; line < first.length; line++) {
      first[line] = Math.max(first[line], first[line - 1]);
    }
  }

  /** The lengths of a line, from below. */
  public List<VerticalPiece> of(int line) {
    return verticals.subList(first[line], first[line + 1]);
  }

  /** Index of the length that passes that height, its ends not counted, or -1. */
  public int inside(int line, Length y) {
    for (int i = first[line]; i < first[line + 1]; i++) {
      VerticalPiece piece = verticals.get(i);
      if (piece.bottom().isShorterThan(y) && y.isShorterThan(piece.top())) {
        return i;
      }
    }
    return -1;
  }

  /** Index of the lowest length that reaches that height, or -1. */
  public int touching(int line, Length y) {
    for (int i = first[line]; i < first[line + 1]; i++) {
      VerticalPiece piece = verticals.get(i);
      if (!y.isShorterThan(piece.bottom()) && !y.isLongerThan(piece.top())) {
        return i;
      }
    }
    return -1;
  }
}
