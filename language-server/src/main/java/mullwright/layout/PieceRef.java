package mullwright.layout;

/**
 * Points at one piece of a layout.
 *
 * @param kind which list of {@link WallLayout} it is in
 * @param index in that list
 */
public record PieceRef(Kind kind, int index) {
  /** The lists of a layout. */
  public enum Kind {
    VERTICAL,
    HORIZONTAL,
    SPLICE,
    ANCHOR,
    CELL,
    COVER
  }
}
