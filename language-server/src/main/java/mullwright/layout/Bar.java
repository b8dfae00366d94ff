package mullwright.layout;

import mullwright.model.Origin;
import mullwright.quantity.Length;

/**
 * A row in one bay: the horizontal there, before it is known which verticals hold its ends.
 *
 * @param line its row's line
 * @param shift of its centre above the row's line: half its face if the row is given by an outer
 *     edge
 * @param middle height of its centre in the middle of the bay
 * @param widths of its profile
 * @param origin the statement that gave the profile, or the row
 */
record Bar(
    int row, int bay, RowLine line, Length shift, Length middle, Widths widths, Origin origin) {
  /** Height of its centre. */
  Length yAt(Length x) {
    return line.yAt(x).plus(shift);
  }

  /** Height of the lower edge of its face. */
  Length lowerEdge(Length x) {
    return yAt(x).minus(line.upright(widths.halfFace()));
  }

  /** Height of the upper edge of its face. */
  Length upperEdge(Length x) {
    return yAt(x).plus(line.upright(widths.halfFace()));
  }

  /** The same bar, so much higher. */
  Bar shifted(Length by) {
    return new Bar(row, bay, line, shift.plus(by), middle.plus(by), widths, origin);
  }
}
