package mullwright.analysis.wall;

import java.util.Optional;
import mullwright.analysis.wind.EffectiveWindArea;
import mullwright.derivation.Derivation;
import mullwright.layout.Cell;
import mullwright.quantity.Kind;

/**
 * The wind a member takes from one lite beside it.
 *
 * <p>From site data it follows for the member's own effective area: its span × the mean width that
 * loads it, the width being at least a third of the span (ASCE 7, 26.2). Pressures that are given
 * are taken as they stand.
 *
 * @param wind the wind on the wall
 * @param cell the lite
 * @param strip what of the wall loads the member; empty if the pressures are given
 * @param pressure what the member takes
 */
public record MemberWind(
    WindOnWall wind, Cell cell, Optional<Strip> strip, WindOnWall.Pressure pressure) {

  /**
   * The strip of wall that loads a member.
   *
   * @param span between two supports, or of what reaches beyond the last [m]
   * @param width mean width over the span [m]
   */
  public record Strip(double span, double width) {

    /** Effective wind area [m²]; empty if there is none. */
    Optional<Double> area() {
      return EffectiveWindArea.solve(new EffectiveWindArea.Member(span, width)).solved();
    }
  }

  /** Of a lite as given, or for its own area where a member has no strip. */
  static MemberWind ofLite(WindOnWall wind, Cell cell) {
    return new MemberWind(wind, cell, Optional.empty(), wind.on(cell.index()));
  }

  /** Of a member by its strip. */
  static MemberWind of(WindOnWall wind, Cell cell, Strip strip) {
    Optional<Double> area = wind.fromSite() ? strip.area() : Optional.empty();
    return area.isEmpty()
        ? ofLite(wind, cell)
        : new MemberWind(wind, cell, Optional.of(strip), wind.on(cell, area.get()));
  }

  /** How the pressure inward or outward came about, under a name. */
  Derivation explain(boolean in, String name) {
    return strip
        .flatMap(by -> wind.explain(cell, by, in))
        .map(site -> named(name, site))
        .orElseGet(() -> stated(in, name));
  }

  private static Derivation named(String name, Derivation site) {
    return new Derivation(
        name,
        site.value(),
        site.kind(),
        site.formula(),
        site.inputs(),
        site.source(),
        site.standing(),
        site.locus());
  }

  private Derivation stated(boolean in, String name) {
    String zone = in ? pressure.zoneIn() : pressure.zoneOut();
    return Derivation.computed(
        name,
        in ? pressure.in() : pressure.out(),
        Kind.PRESSURE,
        "worst zone the lite touches" + (zone.isEmpty() ? "" : ": " + zone) + ", at service level",
        "the project's criteria");
  }
}
