package mullwright.drawing.elevation;

import java.util.Optional;
import mullwright.drawing.Box;

/**
 * The part of a wall that is shown.
 *
 * @param number of the part, from 1; 0 if all of the wall is shown
 * @param count how many parts there are
 * @param shown what is drawn, in millimetres of the wall
 * @param left where the part to the left goes on, if there is one; so the others
 */
record Window(
    int number,
    int count,
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
          0,
          1,
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
   * A line two parts have in common.
   *
   * @param at its x or y in millimetres of the wall
   * @param name of the grid line or the floor
   * @param part the other part's number
   */
  record Match(double at, String name, int part) {
    String words() {
      return "Match line at " + name + ", see part " + part;
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
