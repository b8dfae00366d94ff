package mullwright.layout;

import java.util.ArrayList;
import java.util.List;
import mullwright.quantity.Length;

/** Finds the horizontals that end at a line, on either side of it. */
public final class HorizontalsOnLine {
  private final List<List<HorizontalPiece>> left = new ArrayList<>();
  private final List<List<HorizontalPiece>> right = new ArrayList<>();

  /** Of a layout. */
  public HorizontalsOnLine(WallLayout layout) {
    layout
        .wall()
        .grid()
        .lines()
        .forEach(
            line -> {
              left.add(new ArrayList<>());
              right.add(new ArrayList<>());
            });
    for (HorizontalPiece piece : layout.horizontals()) {
      right.get(piece.leftLine()).add(piece);
      left.get(piece.rightLine()).add(piece);
    }
  }

  /** Those on that side of the line, by row. */
  public List<HorizontalPiece> of(int line, HoleSide side) {
    return side == HoleSide.LEFT ? left.get(line) : right.get(line);
  }

  /** Height at which a horizontal's centre meets the line on that side of it. */
  public static Length height(HorizontalPiece piece, HoleSide side) {
    return side == HoleSide.LEFT ? piece.yRight() : piece.yLeft();
  }

  /** True if one ends there within so much of a height. */
  public boolean near(int line, HoleSide side, Length y, Length within) {
    for (HorizontalPiece piece : of(line, side)) {
      if (!height(piece, side).minus(y).abs().isLongerThan(within)) {
        return true;
      }
    }
    return false;
  }
}
