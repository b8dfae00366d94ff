package mullwright.drawing.elevation;

import mullwright.drawing.Box;

/**
 * The part of a wall that is shown.
 *
 * @param shown what is drawn, in millimetres of the wall
 * @param matchLeft words at the line where the sheet to the left goes on, or ""; so the others
 */
record Window(Box shown, String matchLeft, String matchRight, String matchBottom, String matchTop) {
  /** The whole wall. */
  static final Window ALL =
      new Window(
          new Box(
              Double.NEGATIVE_INFINITY,
              Double.NEGATIVE_INFINITY,
              Double.POSITIVE_INFINITY,
              Double.POSITIVE_INFINITY),
          "",
          "",
          "",
          "");
}
