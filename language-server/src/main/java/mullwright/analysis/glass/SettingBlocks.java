package mullwright.analysis.glass;

import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Length and place of the two setting blocks under a lite.
 *
 * <p>Length of each = max(4 in, 0.1 in per ft² of glass), for elastomeric blocks of 80 to 90 Shore
 * A; that is 27.34 mm per m². Centres at the quarter points of the width; they may move towards the
 * eighth points, but no nearer to a corner than leaves 6 in to the end of the block. Range: blocks
 * that do not meet. Source: flat-glass trade handbook rule, as quoted in many texts.
 */
public final class SettingBlocks {
  private static final double INCH = 0.0254;
  private static final double LEAST_LENGTH = 4 * INCH;

  /** 0.1 in per ft² [1/m]. */
  private static final double LENGTH_PER_AREA = 0.1 * INCH / (144 * INCH * INCH);

  private static final double LEAST_TO_CORNER = 6 * INCH;

  private SettingBlocks() {}

  /**
   * A lite standing on its bottom edge.
   *
   * @param width width of the glass [m]
   * @param height height of the glass [m]
   */
  public record Lite(double width, double height) {}

  /**
   * The two blocks, alike and symmetric.
   *
   * @param length length of each [m]
   * @param firstCentre centre of the left block from the left edge of the glass [m]
   * @param secondCentre centre of the right block from the left edge of the glass [m]
   * @param nearestCentre least distance from an edge of the glass a centre may be moved to [m];
   *     never more than the quarter point
   */
  public record Blocks(
      double length, double firstCentre, double secondCentre, double nearestCentre) {}

  /** Length and places of the blocks. */
  public static Outcome<Blocks> solve(Lite lite) {
    double length = Math.max(LEAST_LENGTH, LENGTH_PER_AREA * lite.width() * lite.height());
    double quarter = lite.width() / 4;
    return Guard.range()
        .positive("width", lite.width(), "m")
        .positive("height", lite.height(), "m")
        .that(
            lite.width() >= 2 * length,
            "width",
            lite.width(),
            "m",
            "at least twice the block length, or the blocks at the quarter points meet")
        .then(
            () ->
                new Blocks(
                    length,
                    quarter,
                    lite.width() - quarter,
                    Math.min(quarter, Math.max(lite.width() / 8, LEAST_TO_CORNER + length / 2))));
  }
}
