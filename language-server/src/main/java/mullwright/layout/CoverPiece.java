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
 * @param carrierName what the piece it lies on is called
 * @param ordinal which part of the cover of that piece, 0 first
 * @param count into how many parts it is cut
 */
public record CoverPiece(
    What what,
    boolean vertical,
    int carrier,
    String part,
    Length start,
    Length end,
    Length length,
    String carrierName,
    int ordinal,
    int count) {
  /** Plate or cap. */
  public enum What {
    PRESSURE_PLATE,
    FACE_CAP
  }

  /**
   * {@code pressure plate of horizontal R2, bay C-D}; with stock joints {@code …, part 2 of 3}.
   *
   * <p>Put together when asked for: a tower has thousands of covers, and few are ever named.
   */
  public String name() {
    String name =
        (what == What.PRESSURE_PLATE ? "pressure plate of " : "face cap of ") + carrierName;
    return count == 1 ? name : name + ", part " + (ordinal + 1) + " of " + count;
  }
}
