package mullwright.layout;

import mullwright.model.Origin;
import mullwright.quantity.Length;

/**
 * A stretch of a line on which a vertical stands without a break other than splices.
 *
 * @param member index in the model's verticals, or -1 if the text says nothing of this line
 * @param widths of its profile
 * @param lower its lower end, {@code upper} its upper end
 * @param origin the statement that made it
 */
record Run(int line, int member, Widths widths, RunEnd lower, RunEnd upper, Origin origin) {
  /** Beyond every height a wall can have. */
  static final Length FAR = Length.LIMIT.times(16);

  Length bottom() {
    return lower.height();
  }

  Length top() {
    return upper.height();
  }

  /**
   * True if it passes that height. An end at a horizontal of unknown face lies on its centre for
   * want of better, and counts as passed.
   */
  boolean crosses(Length y) {
    int above = y.compareTo(bottom());
    int below = top().compareTo(y);
    return (above > 0 || (above == 0 && !lower.known()))
        && (below > 0 || (below == 0 && !upper.known()));
  }

  /** True if it stands beside some of that stretch. */
  boolean overlaps(Length from, Length to) {
    return bottom().isShorterThan(to) && from.isShorterThan(top());
  }

  /** True if a piece can be cut from it. */
  boolean known() {
    return lower.known() && upper.known() && widths.known();
  }

  /** The part of it up to that end. */
  Run upTo(RunEnd end) {
    return new Run(line, member, widths, lower, end, origin);
  }

  /** The part of it from that end on. */
  Run from(RunEnd end) {
    return new Run(line, member, widths, end, upper, origin);
  }
}
