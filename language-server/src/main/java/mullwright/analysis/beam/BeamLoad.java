package mullwright.analysis.beam;

/**
 * A load on a {@link Beam}, positive in the direction of positive deflection.
 *
 * <p>The direction is the caller's choice, say inward; nothing here depends on it.
 */
public sealed interface BeamLoad {

  /**
   * A line load varying linearly between two places: uniform, triangle or one side of a trapezoid.
   *
   * @param from first place [m]
   * @param to last place [m]
   * @param atFrom intensity at {@code from} [N/m]
   * @param atTo intensity at {@code to} [N/m]
   */
  record Distributed(double from, double to, double atFrom, double atTo) implements BeamLoad {

    /** The same intensity [N/m] all along. */
    public static Distributed uniform(double from, double to, double intensity) {
      return new Distributed(from, to, intensity, intensity);
    }
  }

  /**
   * A force at one place.
   *
   * @param at place [m]
   * @param force force [N]
   */
  record PointForce(double at, double force) implements BeamLoad {}

  /**
   * A moment at one place, positive in the direction of positive slope: passing it, the bending
   * moment rises by this much.
   *
   * @param at place [m]; not a hinge, where it would have no side to act on
   * @param moment moment [N·m]
   */
  record Couple(double at, double moment) implements BeamLoad {}
}
