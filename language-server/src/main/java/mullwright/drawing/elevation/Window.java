package mullwright.drawing.elevation;

import java.util.Optional;
import mullwright.drawing.Box;

/**
 * The part of a wall that is shown.
 *
 * @param shown what is drawn, in millimetres of the wall
 * @param left where the sheet to the left goes on, if there is one; so the others
 */
record Window(
    Box shown,
    Optional<Match> left,
    Optional<Match> right,
    Optional<Match> bottom,
    Optional<Match> top) {
  /** Room for words at a match line [mm of paper]. */
  private static final double WORDS = 6;

  /** The whole wall. */
  static final Window ALL =
      new Window(
          new Box(
              Double.NEGATIVE_INFINITY,
              Double.NEGATIVE_INFINITY,
              Double.POSITIVE_INFINITY,
              Double.POSITIVE_INFINITY),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /**
   * A line two sheets have in common.
   *
   * @param at its x or y in millimetres of the wall
   * @param name of the grid line or the floor
   * @param sheet the other sheet's number
   */
  record Match(double at, String name, int sheet) {
    String words() {
      return "Match line at " + name + ", see sheet " + sheet;
    }
  }

  Box around(Box frame) {
    return new Box(
        frame.left() - (left.isPresent() ? WORDS : 0),
        frame.bottom() - (bottom.isPresent() ? WORDS : 0),
        frame.right() + (right.isPresent() ? WORDS : 0),
        frame.top() + (top.isPresent() ? WORDS : 0));
  }
}
