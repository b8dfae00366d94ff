package mullwright.analysis.wall;

/**
 * The part of a cell's load one vertical takes: half the cell's width over the cell's height, as a
 * uniform line load.
 *
 * @param cell index of the cell in the layout
 * @param from lower end [m], centre of the row below; {@code to} upper end [m]
 * @param width half the line-to-line width [m]
 * @param wind what the vertical takes from it
 */
public record Tributary(int cell, double from, double to, double width, MemberWind wind) {
  /** The pressures. */
  WindOnWall.Pressure pressure() {
    return wind.pressure();
  }

  /** Line load inward [N/m]. */
  public double in() {
    return pressure().in() * width;
  }

  /** Line load outward [N/m]. */
  public double out() {
    return pressure().out() * width;
  }
}
