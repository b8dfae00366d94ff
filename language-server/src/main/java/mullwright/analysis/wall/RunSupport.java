package mullwright.analysis.wall;

/**
 * What holds a vertical in and out at one height.
 *
 * @param y height [m]
 * @param anchor index of the anchor or clip in the layout, or -1 where the end butts a horizontal
 * @param horizontal index of the horizontal its end butts, or -1 for an anchor
 * @param deadLoad true if it carries weight too
 * @param name as the shop names it
 */
public record RunSupport(double y, int anchor, int horizontal, boolean deadLoad, String name) {
  /** Two supports nearer than this [m] are one. */
  static final double SAME_HEIGHT = 1e-4;

  static RunSupport anchor(double y, int anchor, boolean deadLoad, String name) {
    return new RunSupport(y, anchor, -1, deadLoad, name);
  }

  static RunSupport horizontal(double y, int horizontal, String name) {
    return new RunSupport(y, -1, horizontal, false, name);
  }
}
