package mullwright.layout;

import mullwright.quantity.Length;

/**
 * A pressure plate or a face cap.
 *
 * @param what which of the two
 * @param vertical true on a vertical, false on a horizontal
 * @param carrier index of the vertical or horizontal piece it lies on
 * @param part name of the plate or cap in the catalog
 * @param start lower or left end; {@code end} upper or right end
 * @param length cut length
 */
public record CoverPiece(
    What what,
    boolean vertical,
    int carrier,
    String part,
    Length start,
    Length end,
    Length length,
    String name) {
  /** Plate or cap. */
  public enum What {
    PRESSURE_PLATE,
    FACE_CAP
  }
}
