package mullwright.layout;

import mullwright.quantity.Length;

/**
 * How an end of a piece is cut.
 *
 * @param slant how much further along (up, or to the right) it is at the right-hand edge of a
 *     vertical, the upper edge of a horizontal, than at the other, over the whole face; zero for a
 *     square cut. A piece turned end for end keeps it
 * @param sleeve name of the splice sleeve that is screwed to this end, or ""
 */
public record EndCut(Length slant, String sleeve) {
  /** Cut square, with nothing screwed to it. */
  public static final EndCut SQUARE = new EndCut(Length.ZERO, "");

  /** True if it is cut square. */
  public boolean square() {
    return slant.signum() == 0;
  }
}
