package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.Outcome;
import mullwright.analysis.wind.CladdingPressure;
import mullwright.analysis.wind.EdgeZone;
import mullwright.analysis.wind.Exposure;
import mullwright.analysis.wind.GroundElevation;
import mullwright.analysis.wind.HighRiseCladding;
import mullwright.analysis.wind.LowRiseCladding;
import mullwright.analysis.wind.VelocityPressure;
import mullwright.analysis.wind.WindEdition;
import mullwright.derivation.Derivation;
import mullwright.layout.Cell;
import mullwright.model.Given;
import mullwright.model.Grid;
import mullwright.model.Wall;
import mullwright.model.WindSite;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/**
 * Wind pressures of ASCE 7 on the cells of a wall, from data of site and building.
 *
 * <p>Zone 5 lies within the width a of each corner of the building: at the ends of the wall that
 * are corners, and on both faces of a corner that does not turn in. A cell that touches it takes it
 * whole. Pressure inward on buildings above 60 ft is that at the cell's top.
 */
final class SiteWind {
  private static final double FOOT = 0.3048;
  private static final double LOW_RISE = 60 * FOOT;
  private static final double FLAT = 10;
  private static final double STRAIGHT = 180;
  private static final String MEASURES = "conventions of measure";
  private static final String SOURCE = "ASCE 7, chapters 26 and 30, from memory";

  private final Wall wall;
  private final WindSite site;
  private final double height;
  private final double roofPressure;
  private final double edge;
  private final List<Double> corners = new ArrayList<>();

  private SiteWind(Wall wall, WindSite site, double roofPressure, double edge) {
    this.wall = wall;
    this.site = site;
    this.height = site.roof().value().toMetres();
    this.roofPressure = roofPressure;
    this.edge = edge;
    corners();
  }

  /** The wind on a wall; empty if it has no site data, or such as the methods decline. */
  static Optional<SiteWind> of(Wall wall) {
    Optional<WindSite> site = wall.criteria().site();
    if (site.isEmpty()) {
      return Optional.empty();
    }
    double height = site.get().roof().value().toMetres();
    Optional<Double> edge =
        EdgeZone.solve(new EdgeZone.Building(site.get().width().value().toMetres(), height))
            .solved();
    Optional<Double> pressure =
        velocityPressure(site.get(), height).solved().map(p -> p.pressure());
    return edge.isEmpty() || pressure.isEmpty()
        ? Optional.empty()
        : Optional.of(new SiteWind(wall, site.get(), pressure.get(), edge.get()));
  }

  private void corners() {
    Grid grid = wall.grid();
    if (grid.lines().isEmpty()) {
      return;
    }
    String ends = site.corners().value();
    if (ends.equals("both") || ends.equals("left")) {
      corners.add(x(0));
    }
    if (ends.equals("both") || ends.equals("right")) {
      corners.add(x(grid.lines().size() - 1));
    }
    for (Grid.Corner corner : grid.corners()) {
      if (corner.angle().value().toSi() < STRAIGHT) {
        corners.add(x(corner.line()));
      }
    }
  }

  private double x(int line) {
    return wall.grid().lines().get(line).x().toMetres();
  }

  private static Outcome<VelocityPressure.Pressure> velocityPressure(WindSite site, double z) {
    return VelocityPressure.solve(
        new VelocityPressure.Site(
            edition(site),
            Exposure.valueOf(site.exposure().value()),
            z,
            site.speed().value().toSi(),
            site.topographic().value(),
            site.directionality().value(),
            elevation(site),
            0));
  }

  private static WindEdition edition(WindSite site) {
    return site.edition().value() == 2022 ? WindEdition.ASCE_7_22 : WindEdition.ASCE_7_16;
  }

  private static double elevation(WindSite site) {
    return site.altitude()
        .flatMap(
            altitude ->
                GroundElevation.solve(new GroundElevation.Site(altitude.value().toMetres()))
                    .solved())
        .orElse(1.0);
  }

  /** Service-level pressures on a cell for an effective wind area [m²]. */
  WindOnWall.Pressure on(Cell cell, double area) {
    Optional<CladdingPressure> ultimate = cladding(cell, area);
    if (ultimate.isEmpty()) {
      return WindOnWall.Pressure.NONE;
    }
    boolean five = nearCorner(cell);
    CladdingPressure service = ultimate.get().allowable();
    return new WindOnWall.Pressure(
        service.inward(),
        -(five ? service.outwardZone5() : service.outwardZone4()),
        five ? "5" : "4",
        five ? "5" : "4");
  }

  private Optional<CladdingPressure> cladding(Cell cell, double area) {
    double internal = internal();
    if (height <= LOW_RISE) {
      return LowRiseCladding.solve(
              new LowRiseCladding.Part(height, roofPressure, area, internal, flat()))
          .solved();
    }
    return HighRiseCladding.solve(
            new HighRiseCladding.Part(
                height, roofPressure, Math.min(roofPressure, partPressure(cell)), area, internal))
        .solved();
  }

  private double partPressure(Cell cell) {
    return velocityPressure(site, heightOf(cell))
        .solved()
        .map(VelocityPressure.Pressure::pressure)
        .orElse(roofPressure);
  }

  // what stands above the roof takes the roof's pressure
  private double heightOf(Cell cell) {
    double above = cell.top().minus(site.ground().value()).toMetres();
    return Math.max(0, Math.min(height, above));
  }

  private double internal() {
    return site.enclosure().value().equals("enclosed") ? 0.18 : 0.55;
  }

  private boolean flat() {
    return site.roofSlope().filter(slope -> slope.value().toSi() <= FLAT).isPresent();
  }

  private boolean nearCorner(Cell cell) {
    double left = cell.left().toMetres();
    double right = cell.right().toMetres();
    return corners.stream().anyMatch(corner -> left < corner + edge && right > corner - edge);
  }

  /** How a service-level pressure on a lite came about. */
  Optional<Derivation> explain(Cell cell, double area, boolean inward) {
    Derivation effective =
        Derivation.computed("effective area", area, Kind.AREA, "area of the lite", SOURCE);
    return cladding(cell, area).map(pressure -> explain(cell, effective, inward, pressure));
  }

  /** How a service-level pressure on a member came about. */
  Optional<Derivation> explain(Cell cell, MemberWind.Strip strip, boolean inward) {
    return strip
        .area()
        .flatMap(
            area ->
                cladding(cell, area)
                    .map(pressure -> explain(cell, effective(strip, area), inward, pressure)));
  }

  private static Derivation effective(MemberWind.Strip strip, double area) {
    return Derivation.computed(
        "effective area",
        area,
        Kind.AREA,
        "span × max(width, span ÷ 3)",
        "ASCE 7, 26.2, from memory",
        Derivation.computed(
            "span",
            strip.span(),
            Kind.LENGTH,
            "between supports, or beyond the last of them",
            MEASURES),
        Derivation.computed(
            "width", strip.width(), Kind.LENGTH, "mean width that loads the span", MEASURES));
  }

  private Derivation explain(
      Cell cell, Derivation effective, boolean inward, CladdingPressure ultimate) {
    boolean five = nearCorner(cell);
    String way = inward ? "wind in" : "wind out";
    double pressure =
        inward ? ultimate.inward() : -(five ? ultimate.outwardZone5() : ultimate.outwardZone4());
    double coefficient =
        inward
            ? ultimate.coefficients().positive()
            : -(five ? ultimate.coefficients().zone5() : ultimate.coefficients().zone4());
    Derivation whole =
        Derivation.computed(
            "ultimate pressure",
            pressure,
            Kind.PRESSURE,
            inward && height > LOW_RISE
                ? "pressure coefficient × velocity pressure at the lite + internal coefficient ×"
                    + " velocity pressure at the roof, at least 16 psf"
                : "(pressure coefficient + internal coefficient) × velocity pressure at the roof,"
                    + " at least 16 psf",
            SOURCE,
            coefficient(coefficient, effective, five),
            Derivation.computed(
                "internal coefficient",
                internal(),
                Kind.RATIO,
                site.enclosure().value() + " building",
                SOURCE),
            velocity("velocity pressure at the roof", height, roofPressure),
            velocity("velocity pressure at the lite", heightOf(cell), partPressure(cell)));
    return Derivation.computed(
        way,
        pressure * WindOnWall.SERVICE_SHARE,
        Kind.PRESSURE,
        "0.6 × ultimate pressure",
        "allowable-stress combinations of ASCE 7 and IBC 2404.1, from memory",
        whole);
  }

  private Derivation coefficient(double value, Derivation effective, boolean five) {
    return Derivation.computed(
        "pressure coefficient",
        value,
        Kind.RATIO,
        (five ? "zone 5, within zone width of a corner" : "zone 4") + ", for effective area",
        SOURCE,
        effective,
        Derivation.computed(
            "zone width",
            Length.nearest(edge),
            "from building width and roof height",
            SOURCE,
            Inputs.length("building width", site.width()),
            Inputs.length("roof height", site.roof())));
  }

  private Derivation velocity(String name, double z, double pressure) {
    List<Derivation> inputs = new ArrayList<>();
    inputs.add(
        Derivation.computed(
            "exposure coefficient",
            velocityPressure(site, z)
                .solved()
                .map(VelocityPressure.Pressure::exposureCoefficient)
                .orElse(1.0),
            Kind.RATIO,
            "exposure "
                + site.exposure().value()
                + ", at least 15 ft above ground, ASCE 7-"
                + site.edition().value() % 100,
            SOURCE,
            Derivation.computed(
                "height above ground",
                Length.nearest(z),
                "top of the part, at most the roof",
                SOURCE,
                Inputs.length("ground", site.ground()))));
    inputs.add(number("Kzt", site.topographic()));
    inputs.add(number("Kd", site.directionality()));
    String formula = "0.00256 × exposure coefficient × Kzt × Kd × speed²";
    if (site.altitude().isPresent()) {
      inputs.add(
          Derivation.computed(
              "Ke",
              elevation(site),
              Kind.RATIO,
              "thinner air at altitude",
              SOURCE,
              Inputs.length("altitude", site.altitude().get())));
      formula = "0.00256 × exposure coefficient × Kzt × Kd × Ke × speed²";
    }
    inputs.add(Inputs.quantity("speed", site.speed(), Kind.SPEED));
    return Derivation.computed(
        name,
        pressure,
        Kind.PRESSURE,
        formula + " (psf, mph)",
        SOURCE,
        inputs.toArray(Derivation[]::new));
  }

  private static Derivation number(String name, Given<Double> given) {
    Quantity value = Quantity.ofSi(given.value(), Kind.RATIO);
    return given.assumed()
        ? Derivation.assumed(name, value, Kind.RATIO, given.source())
        : Derivation.stated(name, value, Kind.RATIO, given.origin());
  }
}
