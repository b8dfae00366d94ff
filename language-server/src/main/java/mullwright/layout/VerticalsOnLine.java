package mullwright.layout;

import java.util.List;
import mullwright.quantity.Ascending;
import mullwright.quantity.Length;

/** Finds the length of vertical at a height of a line. */
public final class VerticalsOnLine {
  private final List<VerticalPiece> verticals;
  private final int[] first;

  /** By length, the highest upper end of it and those below it on its line. */
  private final long[] highest;

  /** Of a layout, whose verticals stand by line, then from below. */
  public VerticalsOnLine(WallLayout layout) {
    this(layout.verticals(), layout.wall().grid().lines().size());
  }

  /** Of lengths by line, then from below, and a number of lines. */
  VerticalsOnLine(List<VerticalPiece> verticals, int lines) {
    this.verticals = verticals;
    first = new int[lines + 1];
    highest = new long[verticals.size()];
    VerticalPiece below = null;
    for (VerticalPiece piece : verticals) {
      int index = piece.index();
      first[piece.line() + 1] = index + 1;
      highest[index] =
          below != null && below.line() == piece.line()
              ? Math.max(highest[index - 1], piece.top().ticks())
              : piece.top().ticks();
      below = piece;
    }
    for (int line = 1; line < first.length; line++) {
      first[line] = Math.max(first[line], first[line - 1]);
    }
  }

  /** The lengths of a line, from below. */
  public List<VerticalPiece> of(int line) {
    return verticals.subList(first[line], first[line + 1]);
  }

  /** The lengths of a line that touch a stretch of height, from below, and perhaps some more. */
  public List<VerticalPiece> near(int line, Length from, Length to) {
    int low = reaching(line, from);
    int high = low;
    while (high < first[line + 1] && !verticals.get(high).bottom().isLongerThan(to)) {
      high++;
    }
    return verticals.subList(low, high);
  }

  /** Index of the lowest length that passes that height, its ends not counted, or -1. */
  public int inside(int line, Length y) {
    for (int i = reaching(line, y); i < first[line + 1]; i++) {
      VerticalPiece piece = verticals.get(i);
      if (piece.bottom().isShorterThan(y) && y.isShorterThan(piece.top())) {
        return i;
      }
    }
    return -1;
  }

  /** Index of the lowest length that reaches that height, or -1. */
  public int touching(int line, Length y) {
    for (int i = reaching(line, y); i < first[line + 1]; i++) {
      VerticalPiece piece = verticals.get(i);
      if (!y.isShorterThan(piece.bottom()) && !y.isLongerThan(piece.top())) {
        return i;
      }
    }
    return -1;
  }

  /**
   * The lowest length of a line whose upper end, or that of one below it, is not under a height.
   */
  private int reaching(int line, Length y) {
    return Ascending.leading(first[line], first[line + 1], i -> highest[i] < y.ticks());
  }
}
