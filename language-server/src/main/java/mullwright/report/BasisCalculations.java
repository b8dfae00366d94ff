package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import mullwright.analysis.wall.Stiffness;
import mullwright.model.Criteria;
import mullwright.model.Given;
import mullwright.model.WindSite;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.LengthPrinter;
import mullwright.quantity.Quantity;
import mullwright.quantity.QuantityPrinter;
import mullwright.quantity.UnitSystem;

/** What the numbers stand on: the project's criteria, and the constants taken. */
@AutoService(CalculationSection.class)
public final class BasisCalculations implements CalculationSection {
  @Override
  public int order() {
    return 10;
  }

  @Override
  public List<Table> tables(Report.WallAtHand wall, Report.Options options) {
    Basis basis = new Basis(wall.units());
    Criteria criteria = wall.facts().wall().criteria();
    basis.row(
        "wind pressures",
        criteria.windBasis().map(Given::value).orElse("not said; taken as service"),
        "ultimate ones are taken at 0.6 (ASCE 7, allowable-stress combinations, from memory)");
    for (Criteria.WindZone zone : criteria.wind()) {
      basis.row(
          "wind " + zone.name(),
          basis.say(zone.in().value(), Kind.PRESSURE)
              + " in, "
              + basis.say(zone.out().value(), Kind.PRESSURE)
              + " out"
              + zone.withinEnds().map(w -> ", within " + basis.say(w) + " of ends").orElse(""),
          "stated");
    }
    criteria.site().ifPresent(site -> site(basis, site));
    criteria
        .temperature()
        .ifPresent(
            given ->
                basis.row(
                    "metal temperature",
                    basis.say(given.value().least(), Kind.TEMPERATURE)
                        + " to "
                        + basis.say(given.value().most(), Kind.TEMPERATURE)
                        + ", set at "
                        + basis.say(given.value().set(), Kind.TEMPERATURE),
                    given.assumed() ? given.source() : "stated"));
    criteria.slabDeflection().entrySet().stream()
        .sorted(java.util.Map.Entry.comparingByKey())
        .forEach(
            entry ->
                basis.row(
                    "slab deflection" + (entry.getKey().isEmpty() ? "" : " of " + entry.getKey()),
                    basis.say(entry.getValue()),
                    "stated"));
    criteria
        .deflectionLimit()
        .ifPresent(
            ratio -> basis.row("deflection limit", "span ÷ " + plain(ratio.value()), "stated"));
    basis.row(
        "modulus, aluminium and steel",
        basis.say(Quantity.ofSi(Stiffness.ALUMINIUM, Kind.STRESS), Kind.STRESS)
            + " and "
            + basis.say(Quantity.ofSi(Stiffness.STEEL, Kind.STRESS), Kind.STRESS),
        "for deflection; Aluminum Design Manual and steel handbooks, from memory");
    basis.row("splices", "hinges", "a sleeve passes shear and no moment (common practice)");
    basis.row("horizontals", "simple spans", "45° parting of the load (common practice)");
    return List.of(
        new Table(
            "basis",
            "What the numbers stand on",
            List.of(
                Column.text("fact", "Fact"),
                Column.text("value", "Value"),
                Column.text("source", "Source")),
            basis.rows,
            List.of()));
  }

  private static void site(Basis basis, WindSite site) {
    String standard = "components and cladding of ASCE 7-" + site.edition().value() % 100;
    basis.row("wind pressures from site data", standard, said(site.edition()));
    basis.row("wind speed", basis.say(site.speed().value(), Kind.SPEED), said(site.speed()));
    basis.row("exposure", site.exposure().value(), said(site.exposure()));
    basis.row("roof height", basis.say(site.roof()), said(site.roof()));
    basis.row("building width", basis.say(site.width()), said(site.width()));
    basis.row("enclosure", site.enclosure().value(), said(site.enclosure()));
    basis.row("corners of the building", site.corners().value(), said(site.corners()));
    basis.row("ground", basis.say(site.ground()), said(site.ground()));
    basis.row("Kzt", plain(site.topographic().value()), said(site.topographic()));
    basis.row("Kd", plain(site.directionality().value()), said(site.directionality()));
    site.altitude().ifPresent(it -> basis.row("altitude", basis.say(it), said(it)));
    site.roofSlope()
        .ifPresent(it -> basis.row("roof slope", basis.say(it.value(), Kind.ANGLE), said(it)));
  }

  private static String said(Given<?> given) {
    return given.assumed() ? "default: " + given.source() : "stated";
  }

  private static String plain(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }

  private static final class Basis {
    private final UnitSystem units;
    private final List<List<Entry>> rows = new ArrayList<>();

    Basis(UnitSystem units) {
      this.units = units;
    }

    void row(String fact, String value, String source) {
      rows.add(List.of(Entry.text(fact), Entry.text(value), Entry.text(source)));
    }

    String say(Quantity quantity, Kind kind) {
      return QuantityPrinter.in(units, quantity, kind);
    }

    String say(Given<Length> length) {
      return LengthPrinter.in(units, length.value());
    }
  }
}
