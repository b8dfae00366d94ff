package mullwright.review;

import java.util.List;
import mullwright.layout.PieceRef;

/**
 * Which piece of a wall, so that it can be found in the other wall.
 *
 * @param lines the line of a vertical or anchor, else the lines at left and right
 * @param rows the row of a horizontal, the rows below and above a lite
 * @param more which of several there: which length of a vertical, plate or cap and its part
 */
public record PieceKey(PieceRef.Kind kind, List<String> lines, List<String> rows, String more) {
  public PieceKey {
    lines = List.copyOf(lines);
    rows = List.copyOf(rows);
  }
}
