package mullwright.analysis.wall;

/**
 * What holds a vertical in and out at one height.
 *
 * @param y height [m]
 * @param anchor index of the anchor or clip in the layout, or -1 where the end butts a horizontal
 * @param deadLoad true if it carries weight too
 * @param name as the shop names it
 */
public record RunSupport(double y, int anchor, boolean deadLoad, String name) {}
