package mullwright.analysis.glass;

import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Size of a captured lite in one direction, and the room left around it in the pocket.
 *
 * <p>Daylight opening = centre-to-centre spacing − half sightlines; glass = daylight opening +
 * bites; edge clearance = half sightline − half tongue − bite on each side. Lengths in metres,
 * unrounded: what is ordered is rounded elsewhere. A negative clearance is answered, not refused:
 * it says that glass and tongue overlap. Source: common practice, plain geometry.
 */
public final class GlassSize {
  private GlassSize() {}

  /**
   * One edge of the lite.
   *
   * @param halfSightline from the member's centre line to the edge of the daylight opening [m]
   * @param halfTongue from the member's centre line to the face of its tongue [m]
   * @param bite depth of glass behind the sightline [m]
   */
  public record Edge(double halfSightline, double halfTongue, double bite) {}

  /**
   * A lite between two members.
   *
   * @param spacing centre to centre of the members [m]
   * @param first left or lower edge
   * @param second right or upper edge
   */
  public record Opening(double spacing, Edge first, Edge second) {}

  /**
   * What follows.
   *
   * @param daylightOpening between the sightlines [m]
   * @param glass size of the lite [m]
   * @param firstClearance edge of glass to tongue at the first edge [m]; negative where they
   *     overlap
   * @param secondClearance the same at the second edge [m]
   */
  public record Size(
      double daylightOpening, double glass, double firstClearance, double secondClearance) {}

  /** Size and clearances in one direction. */
  public static Outcome<Size> solve(Opening opening) {
    Edge first = opening.first();
    Edge second = opening.second();
    double daylight = opening.spacing() - first.halfSightline() - second.halfSightline();
    Guard guard = Guard.range().positive("member spacing", opening.spacing(), "m");
    edge(guard, first);
    edge(guard, second);
    return guard
        .positive("daylight opening", daylight, "m")
        .then(
            () ->
                new Size(
                    daylight,
                    daylight + first.bite() + second.bite(),
                    clearance(first),
                    clearance(second)));
  }

  private static void edge(Guard guard, Edge edge) {
    guard
        .notNegative("half sightline", edge.halfSightline(), "m")
        .notNegative("half tongue", edge.halfTongue(), "m")
        .notNegative("bite", edge.bite(), "m");
  }

  private static double clearance(Edge edge) {
    return edge.halfSightline() - edge.halfTongue() - edge.bite();
  }
}
