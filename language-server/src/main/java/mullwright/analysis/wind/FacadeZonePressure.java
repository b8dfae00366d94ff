package mullwright.analysis.wind;

import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Wind pressure on a facade element by zone, EN 1991-1-4: w = q_p(z_e)·c_pe − q_p(z_i)·c_pi.
 *
 * <p>c_pe,10 | c_pe,1: zone A −1.2 | −1.4, zone B −0.8 | −1.1, zone D +0.8 | +1.0; between 1 and 10
 * m² c_pe,1 − (c_pe,1 − c_pe,10)·log₁₀A. Zone A is e/5 wide, e the lesser of the crosswind breadth
 * b and 2h. Vertical walls of rectangular buildings, h/d ≥ 1 (for lower ones D is on the safe
 * side), h/d up to 5. National annexes change much of this. Source: EN 1991-1-4:2005, table 7.1,
 * recommended values, from memory.
 */
public final class FacadeZonePressure {
  private FacadeZonePressure() {}

  /** Zones of a vertical wall that glazing meets. */
  public enum Zone {
    /** Side wall next to the windward corner. */
    A(-1.2, -1.4),
    /** Side wall behind zone A. */
    B(-0.8, -1.1),
    /** Windward wall. */
    D(0.8, 1.0);

    private final double large;
    private final double small;

    Zone(double large, double small) {
      this.large = large;
      this.small = small;
    }

    /** c_pe for a loaded area [m²]. */
    double coefficient(double area) {
      double held = Math.max(1, Math.min(10, area));
      return small - (small - large) * StrictMath.log10(held);
    }
  }

  /**
   * An element and the pressures around it.
   *
   * @param zone zone of the wall
   * @param area loaded area of the element [m²]
   * @param outside q_p at the reference height of the outside [Pa]
   * @param inside q_p at the reference height of the inside [Pa]
   * @param insidePressure c_pi that pushes outward, positive; +0.2 where openings are not known
   * @param insideSuction c_pi that pulls inward, negative; −0.3 where openings are not known
   */
  public record Element(
      Zone zone,
      double area,
      double outside,
      double inside,
      double insidePressure,
      double insideSuction) {}

  /**
   * Pressure on the element.
   *
   * @param externalCoefficient c_pe
   * @param pressure net pressure in the zone's own direction, the worse inside pressure taken [Pa];
   *     positive towards the wall
   */
  public record Net(double externalCoefficient, double pressure) {}

  /** Net pressure on the element. */
  public static Outcome<Net> solve(Element element) {
    return Guard.range()
        .positive("loaded area", element.area(), "m²")
        .positive("peak velocity pressure outside", element.outside(), "Pa")
        .notNegative("peak velocity pressure inside", element.inside(), "Pa")
        .that(
            element.insidePressure() >= 0 && element.insidePressure() <= 0.9,
            "internal pressure coefficient",
            element.insidePressure(),
            "",
            "between 0 and 0.9")
        .that(
            element.insideSuction() <= 0 && element.insideSuction() >= -0.9,
            "internal suction coefficient",
            element.insideSuction(),
            "",
            "between -0.9 and 0")
        .then(() -> net(element));
  }

  private static Net net(Element element) {
    double external = element.zone().coefficient(element.area());
    double internal = external > 0 ? element.insideSuction() : element.insidePressure();
    return new Net(external, element.outside() * external - element.inside() * internal);
  }

  /**
   * Width of zone A.
   *
   * @param breadth crosswind breadth b [m]
   * @param height building height h [m]
   */
  public record Wall(double breadth, double height) {}

  /** Width e/5 of zone A [m]. */
  public static Outcome<Double> edge(Wall wall) {
    return Guard.range()
        .positive("crosswind breadth", wall.breadth(), "m")
        .positive("building height", wall.height(), "m")
        .then(() -> Math.min(wall.breadth(), 2 * wall.height()) / 5);
  }
}
