package mullwright.analysis.wind;

import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Width a of the edge strip (zone 5) at each corner of a wall, by ASCE 7.
 *
 * <p>h ≤ 60 ft: the lesser of a tenth of the least width and 0.4 h, but at least 4 % of the least
 * width and 3 ft. h > 60 ft: a tenth of the least width, but at least 3 ft. Source: ASCE 7-16,
 * figures 30.3-1 and 30.4-1, from memory.
 */
public final class EdgeZone {
  private static final double FOOT = 0.3048;
  private static final double LOW_RISE = 60 * FOOT;
  private static final double LEAST = 3 * FOOT;

  private EdgeZone() {}

  /**
   * A building.
   *
   * @param leastWidth least horizontal dimension [m]
   * @param height mean roof height h [m]
   */
  public record Building(double leastWidth, double height) {}

  /** Width of zone 5 [m]. */
  public static Outcome<Double> solve(Building building) {
    return Guard.range()
        .positive("least horizontal dimension", building.leastWidth(), "m")
        .positive("mean roof height", building.height(), "m")
        .then(() -> width(building));
  }

  private static double width(Building building) {
    double tenth = 0.1 * building.leastWidth();
    if (building.height() > LOW_RISE) {
      return Math.max(tenth, LEAST);
    }
    return Math.max(
        Math.min(tenth, 0.4 * building.height()), Math.max(0.04 * building.leastWidth(), LEAST));
  }
}
