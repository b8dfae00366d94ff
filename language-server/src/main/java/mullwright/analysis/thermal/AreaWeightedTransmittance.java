package mullwright.analysis.thermal;

import mullwright.analysis.Guard;
import mullwright.analysis.Outcome;

/**
 * Thermal transmittance of a framed lite by the area weighting of NFRC 100: U_t = (U_f·A_f +
 * U_e·A_e + U_c·A_c)/A_pf.
 *
 * <p>A_f the frame, of the given sightline all round; A_e the edge of glass, a band 63.5 mm (2 1/2
 * in) wide inside the sightline; A_c the centre of glass; A_pf the whole, all in m²; U in W/(m²K).
 * One lite, no intermediate member: how an intermediate vertical of a rating size is to be counted
 * is not certain to this project. A product rating is not the transmittance of a project. Source:
 * NFRC 100, area weighting, from memory.
 */
public final class AreaWeightedTransmittance {
  /** Width of the edge-of-glass band [m]. */
  public static final double EDGE_BAND = 0.0635;

  private AreaWeightedTransmittance() {}

  /**
   * A framed lite.
   *
   * @param width overall width [m]
   * @param height overall height [m]
   * @param sightline width of the frame all round [m]
   * @param frame U_f [W/(m²K)]
   * @param edge U_e [W/(m²K)]
   * @param centre U_c [W/(m²K)]
   */
  public record Lite(
      double width, double height, double sightline, double frame, double edge, double centre) {}

  /**
   * The result and its areas.
   *
   * @param frameArea A_f [m²]
   * @param edgeArea A_e [m²]
   * @param centreArea A_c [m²]
   * @param transmittance U_t [W/(m²K)]
   */
  public record Transmittance(
      double frameArea, double edgeArea, double centreArea, double transmittance) {}

  /** Transmittance of the framed lite. */
  public static Outcome<Transmittance> solve(Lite lite) {
    double glassWidth = lite.width() - 2 * lite.sightline();
    double glassHeight = lite.height() - 2 * lite.sightline();
    Guard guard =
        Guard.range()
            .positive("width", lite.width(), "m")
            .positive("height", lite.height(), "m")
            .notNegative("sightline", lite.sightline(), "m")
            .that(
                Math.min(glassWidth, glassHeight) >= 2 * EDGE_BAND,
                "visible glass",
                Math.min(glassWidth, glassHeight),
                "m",
                "at least 0.127 m both ways, or the edge bands meet");
    transmittance(guard, "frame", lite.frame());
    transmittance(guard, "edge of glass", lite.edge());
    transmittance(guard, "centre of glass", lite.centre());
    return guard.then(() -> weigh(lite, glassWidth, glassHeight));
  }

  private static void transmittance(Guard guard, String part, double value) {
    guard.that(
        value > 0 && value <= 20,
        "thermal transmittance of the " + part,
        value,
        "W/(m²K)",
        "above 0 and at most 20 W/(m²K)");
  }

  private static Transmittance weigh(Lite lite, double glassWidth, double glassHeight) {
    double whole = lite.width() * lite.height();
    double glass = glassWidth * glassHeight;
    double centre = (glassWidth - 2 * EDGE_BAND) * (glassHeight - 2 * EDGE_BAND);
    double frame = whole - glass;
    double edge = glass - centre;
    return new Transmittance(
        frame,
        edge,
        centre,
        (lite.frame() * frame + lite.edge() * edge + lite.centre() * centre) / whole);
  }
}
