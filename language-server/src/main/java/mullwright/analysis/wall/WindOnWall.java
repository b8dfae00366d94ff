package mullwright.analysis.wall;

import java.util.List;
import java.util.Optional;
import mullwright.derivation.Derivation;
import mullwright.layout.Cell;
import mullwright.layout.WallLayout;
import mullwright.model.Criteria;
import mullwright.model.Grid;
import mullwright.model.Wall;
import mullwright.quantity.Kind;

/**
 * The wind pressure each cell of a wall takes: of all zones it touches, the worst each way.
 *
 * <p>They are given by zone, or follow from data of the site by ASCE 7 for the effective wind area
 * of the lite or member. Pressures given as ultimate are brought to service level by {@value
 * #SERVICE_SHARE} (ASCE 7 allowable-stress combinations, 0.6 W, from memory); members that support
 * glass get no smaller share for deflection. The zone {@code field} is everywhere that no other
 * zone covers wholly.
 */
public final class WindOnWall {
  /** Service-level share of an ultimate pressure. */
  public static final double SERVICE_SHARE = 0.6;

  private final Wall wall;
  private final double share;
  private final List<Criteria.WindZone> zones;

  /** By cell: asked for by the beams beside it and by every rule about lites. */
  private final Kept<Pressure> known;

  private final Optional<SiteWind> site;

  /**
   * Pressures on a surface.
   *
   * @param in pressure that pushes inward [Pa], 0 or more
   * @param out suction that pulls outward [Pa], 0 or more
   * @param zoneIn the zone that governs inward, "" if none is given
   * @param zoneOut the zone that governs outward
   */
  public record Pressure(double in, double out, String zoneIn, String zoneOut) {
    static final Pressure NONE = new Pressure(0, 0, "", "");

    /** The larger of the two [Pa]. */
    public double largest() {
      return Math.max(in, out);
    }

    private Pressure worse(Criteria.WindZone zone, double share) {
      double zoneIn = zone.in().value().toSi() * share;
      double zoneOut = zone.out().value().toSi() * share;
      return new Pressure(
          Math.max(in, zoneIn),
          Math.max(out, zoneOut),
          zoneIn > in ? zone.name() : this.zoneIn,
          zoneOut > out ? zone.name() : this.zoneOut);
    }
  }

  WindOnWall(WallLayout layout) {
    this.wall = layout.wall();
    this.known =
        new Kept<>(
            layout.cells().size(),
            index -> on(layout.cells().get(index), areaOf(layout.cells().get(index))));
    this.zones = wall.criteria().wind();
    this.site = SiteWind.of(wall);
    this.share =
        wall.criteria().windBasis().filter(basis -> basis.value().equals("ultimate")).isPresent()
            ? SERVICE_SHARE
            : 1;
  }

  /** True if the project gives any pressure at all. */
  public boolean given() {
    return !zones.isEmpty() || site.isPresent();
  }

  /** The pressure a cell takes as a lite: for its own area. */
  public Pressure on(Cell cell) {
    return on(cell.index());
  }

  /** The same, of the cell of that index. */
  Pressure on(int cell) {
    return known.get(cell);
  }

  private static double areaOf(Cell cell) {
    return cell.glassWidth().toMetres() * cell.glassHeight().toMetres();
  }

  /**
   * The pressure a member takes from a cell beside it.
   *
   * @param area effective wind area of the member [m²]; pressures that are given do not depend on
   *     it
   */
  public Pressure on(Cell cell, double area) {
    if (site.isPresent()) {
      return site.get().on(cell, area);
    }
    Pressure pressure = Pressure.NONE;
    boolean covered = false;
    for (Criteria.WindZone zone : zones) {
      if (special(zone) && touches(zone, cell)) {
        pressure = pressure.worse(zone, share);
        covered |= covers(zone, cell);
      }
    }
    if (!covered) {
      for (Criteria.WindZone zone : zones) {
        pressure = special(zone) ? pressure : pressure.worse(zone, share);
      }
    }
    return pressure;
  }

  /** True if the pressures follow from site data, and so from the area that takes them. */
  boolean fromSite() {
    return site.isPresent();
  }

  /** How the pressure a member takes from a cell came about; empty if it is given. */
  Optional<Derivation> explain(Cell cell, MemberWind.Strip strip, boolean inward) {
    return site.flatMap(data -> data.explain(cell, strip, inward));
  }

  /** How the worse of the two pressures a lite takes came about; empty if none is given. */
  public Optional<Derivation> explain(Cell cell) {
    Pressure pressure = on(cell);
    boolean inward = pressure.in() >= pressure.out();
    if (site.isPresent()) {
      return site.get().explain(cell, areaOf(cell), inward);
    }
    String name = inward ? pressure.zoneIn() : pressure.zoneOut();
    return zones.stream()
        .filter(zone -> zone.name().equals(name))
        .findFirst()
        .map(zone -> explain(zone, inward));
  }

  private Derivation explain(Criteria.WindZone zone, boolean inward) {
    String way = inward ? "wind in" : "wind out";
    Derivation stated =
        Inputs.quantity(way + ", " + zone.name(), inward ? zone.in() : zone.out(), Kind.PRESSURE);
    return share == 1
        ? stated
        : Derivation.computed(
            way,
            stated.value().toSi() * share,
            Kind.PRESSURE,
            "0.6 × " + stated.name(),
            "allowable-stress combinations of ASCE 7 and IBC 2404.1, from memory",
            stated);
  }

  private static boolean special(Criteria.WindZone zone) {
    return zone.withinEnds().isPresent() || zone.from().isPresent() || zone.to().isPresent();
  }

  private boolean touches(Criteria.WindZone zone, Cell cell) {
    return overlap(zone, cell, false);
  }

  private boolean covers(Criteria.WindZone zone, Cell cell) {
    return overlap(zone, cell, true);
  }

  private boolean overlap(Criteria.WindZone zone, Cell cell, boolean wholly) {
    double bottom = cell.bottom().toMetres();
    double top = cell.top().toMetres();
    double from = zone.from().map(h -> h.elevation().toMetres()).orElse(Double.NEGATIVE_INFINITY);
    double to = zone.to().map(h -> h.elevation().toMetres()).orElse(Double.POSITIVE_INFINITY);
    boolean high = wholly ? from <= bottom && top <= to : from < top && bottom < to;
    return high
        && zone.withinEnds()
            .map(within -> nearAnEnd(cell, within.value().toMetres(), wholly))
            .orElse(true);
  }

  private boolean nearAnEnd(Cell cell, double within, boolean wholly) {
    double left = cell.left().toMetres();
    double right = cell.right().toMetres();
    for (Grid.Face face : wall.grid().faces()) {
      double faceLeft = x(face.firstLine());
      double faceRight = x(face.lastLine());
      if (left < faceLeft || right > faceRight) {
        continue;
      }
      boolean nearLeft = wholly ? right <= faceLeft + within : left < faceLeft + within;
      boolean nearRight = wholly ? left >= faceRight - within : right > faceRight - within;
      if (nearLeft || nearRight) {
        return true;
      }
    }
    return false;
  }

  private double x(int line) {
    return wall.grid().lines().get(line).x().toMetres();
  }
}
