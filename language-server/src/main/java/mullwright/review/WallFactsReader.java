package mullwright.review;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import mullwright.check.WallFacts;
import mullwright.model.Catalog;
import mullwright.model.Criteria;
import mullwright.model.Given;
import mullwright.model.Installation;
import mullwright.model.Remarked;
import mullwright.model.Wall;
import mullwright.quantity.Kind;
import mullwright.quantity.Quantity;
import mullwright.syntax.Remark;

/** Reads a wall into a sheet of facts. */
public final class WallFactsReader {
  private WallFactsReader() {}

  /** The facts of a wall by itself, with those of the parts it is made of. */
  public static FactSheet read(WallFacts facts) {
    return read(facts, WallNames.of(facts.wall()));
  }

  static FactSheet read(WallFacts facts, WallNames names) {
    SheetWriter to = new SheetWriter(names);
    Wall wall = facts.wall();
    new GridFacts(wall, to).write();
    new MemberFacts(wall, to).write();
    wall(facts, to);
    criteria(wall.criteria(), to);
    fabrication(wall, to);
    installation(wall, to);
    remarks(facts, to);
    Catalog catalog = facts.catalog();
    new PartFacts(catalog, to).write(to.sheet());
    return to.sheet();
  }

  private static void wall(WallFacts facts, SheetWriter to) {
    Wall wall = facts.wall();
    Subject subject = to.begin(Topic.WALL);
    to.words(subject, "name", wall.name());
    wall.system().ifPresent(system -> to.words(subject, "system", system.name()));
    new TreeMap<>(wall.finish())
        .forEach((side, word) -> to.words(subject, ("finish " + side).strip(), word.value()));
    facts
        .text()
        .model()
        .project()
        .ifPresent(
            project -> {
              to.words(subject, "project", project.name());
              to.word(subject, "revision", project.revision());
            });
  }

  private static void criteria(Criteria criteria, SheetWriter to) {
    Subject subject = to.begin(Topic.CRITERIA);
    to.word(subject, "wind", criteria.windBasis());
    criteria
        .temperature()
        .ifPresent(
            metal -> {
              temperature(to, subject, "metal temperature, least", metal.value().least());
              temperature(to, subject, "metal temperature, most", metal.value().most());
              temperature(to, subject, "metal temperature, set at", metal.value().set());
            });
    new TreeMap<>(criteria.slabDeflection())
        .forEach(
            (floor, length) ->
                to.size(
                    subject,
                    ("slab deflection " + called(floor, to.names())).strip(),
                    length.value()));
    to.length(subject, "story drift", criteria.storyDrift());
    number(to, subject, "story drift ratio", criteria.storyDriftRatio());
    to.words(subject, "exposure", criteria.exposure().value());
    number(to, subject, "deflection limit, span over", criteria.deflectionLimit());
    for (Criteria.WindZone zone : criteria.wind()) {
      Subject wind = to.begin(Topic.WIND, Name.other(zone.name()));
      to.amount(wind, "in", Kind.PRESSURE, Optional.of(zone.in()));
      to.amount(wind, "out", Kind.PRESSURE, Optional.of(zone.out()));
      to.length(wind, "within ends", zone.withinEnds());
      to.place(wind, "from", zone.from());
      to.place(wind, "to", zone.to());
    }
  }

  private static String called(String floor, WallNames names) {
    return names.places().getOrDefault(floor, Name.floor(floor)).id();
  }

  private static void temperature(
      SheetWriter to, Subject subject, String property, Quantity quantity) {
    to.put(subject, property, new Value.Amount(quantity, Kind.TEMPERATURE));
  }

  private static void number(
      SheetWriter to, Subject subject, String property, Optional<Given<Double>> number) {
    number.ifPresent(
        value ->
            to.put(
                subject,
                property,
                new Value.Amount(Quantity.ofSi(value.value(), Kind.RATIO), Kind.RATIO)));
  }

  private static void fabrication(Wall wall, SheetWriter to) {
    Subject subject = to.begin(Topic.FABRICATION);
    to.size(subject, "kerf", wall.fabrication().kerf().value());
    to.size(subject, "end-trim", wall.fabrication().endTrim().value());
    to.size(subject, "least-drop", wall.fabrication().leastDrop().value());
    for (Map.Entry<String, Given<String>> fact : wall.fabrication().facts().entrySet()) {
      to.words(subject, fact.getKey(), fact.getValue().value());
    }
  }

  private static void installation(Wall wall, SheetWriter to) {
    for (Installation.Stretch stretch : wall.installation().stretches()) {
      Subject subject =
          to.begin(
              Topic.INSTALLATION,
              Name.line(to.names().lines().get(stretch.firstLine())),
              Name.line(to.names().lines().get(stretch.lastLine())));
      to.words(subject, "by", stretch.method().name().toLowerCase(Locale.ROOT));
      to.words(subject, "start", stretch.fromRight() ? "right" : "left");
    }
  }

  /** Remarks of the wall's own text; those of the catalog are the catalog's business. */
  private static void remarks(WallFacts facts, SheetWriter to) {
    for (Remarked remark : facts.text().model().remarks()) {
      boolean own =
          remark.origin().file().equals(facts.wall().origin().file())
              && remark.origin().segment() == facts.wall().origin().segment();
      if (own && remark.kind() != Remark.Kind.NOTE) {
        to.begin(
            Topic.REMARK,
            Name.other(remark.kind().name().toLowerCase(Locale.ROOT)),
            Name.other(remark.text()));
      }
    }
  }
}
