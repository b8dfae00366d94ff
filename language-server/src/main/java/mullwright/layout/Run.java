package mullwright.layout;

import mullwright.model.Origin;
import mullwright.quantity.Length;

/**
 * A stretch of a line on which a vertical stands without a break other than splices.
 *
 * @param member index in the model's verticals, or -1 if the text says nothing of this line
 * @param widths of its profile
 * @param bottom lower end, {@code top} upper end
 * @param endsKnown false if an end hangs on a profile nobody knows; then no piece is cut from it
 * @param origin the statement that made it
 */
record Run(
    int line,
    int member,
    Widths widths,
    Length bottom,
    Length top,
    boolean endsKnown,
    Origin origin) {
  /** Beyond every height a wall can have. */
  static final Length FAR = Length.LIMIT.times(16);

  /** True if it passes that height. */
  boolean crosses(Length y) {
    return bottom.isShorterThan(y) && y.isShorterThan(top);
  }

  /** True if it stands beside some of that stretch. */
  boolean overlaps(Length from, Length to) {
    return bottom.isShorterThan(to) && from.isShorterThan(top);
  }

  /** True if a piece can be cut from it. */
  boolean known() {
    return endsKnown && widths.known();
  }

  /** The part of it between two heights. */
  Run part(Length from, Length to, boolean known) {
    return new Run(line, member, widths, from, to, known, origin);
  }
}
