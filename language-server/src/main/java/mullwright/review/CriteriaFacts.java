package mullwright.review;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import mullwright.model.Criteria;
import mullwright.model.Given;
import mullwright.model.GlassCriteria;
import mullwright.model.Height;
import mullwright.model.WindSite;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/** Tells what the project asks of a wall. */
final class CriteriaFacts {
  private final Criteria criteria;
  private final SheetWriter to;

  CriteriaFacts(Criteria criteria, SheetWriter to) {
    this.criteria = criteria;
    this.to = to;
  }

  void write() {
    Subject subject = to.begin(Topic.CRITERIA);
    to.word(subject, "wind", criteria.windBasis());
    criteria
        .temperature()
        .ifPresent(
            metal -> {
              temperature(subject, "metal temperature, least", metal.value().least());
              temperature(subject, "metal temperature, most", metal.value().most());
              temperature(subject, "metal temperature, set at", metal.value().set());
            });
    for (Map.Entry<String, Given<Length>> floor :
        new TreeMap<>(criteria.slabDeflection()).entrySet()) {
      String where = ("slab deflection " + called(floor.getKey())).strip();
      to.size(subject, where, floor.getValue().value());
    }
    to.length(subject, "story drift", criteria.storyDrift());
    to.number(subject, "story drift ratio", criteria.storyDriftRatio());
    to.words(subject, "exposure", criteria.exposure().value());
    to.number(subject, "deflection limit, span over", criteria.deflectionLimit());
    glass(subject, criteria.glass());
    for (Criteria.WindZone zone : criteria.wind()) {
      Subject wind = to.begin(Topic.WIND, Name.other(zone.name()));
      to.amount(wind, "in", Kind.PRESSURE, Optional.of(zone.in()));
      to.amount(wind, "out", Kind.PRESSURE, Optional.of(zone.out()));
      to.length(wind, "within ends", zone.withinEnds());
      to.place(wind, "from", zone.from());
      to.place(wind, "to", zone.to());
    }
    criteria.site().ifPresent(site -> site(subject, site));
  }

  private void glass(Subject subject, GlassCriteria glass) {
    int number = 0;
    for (Height line : glass.floorLines()) {
      number++;
      to.place(subject, "safety floor line, no. " + number, line);
    }
    to.number(subject, "importance", Optional.of(glass.importance()));
    to.number(subject, "glass deflection, short side over", glass.deflectionRatio());
    to.length(subject, "glass deflection, most", glass.mostDeflection());
    to.size(subject, "glass bite, least", glass.leastBite().value());
  }

  private void site(Subject subject, WindSite site) {
    to.amount(subject, "site wind speed", Kind.SPEED, Optional.of(site.speed()));
    to.words(subject, "site exposure", site.exposure().value());
    to.size(subject, "site roof height", site.roof().value());
    to.size(subject, "site building width", site.width().value());
    to.size(subject, "site ground", site.ground().value());
    to.number(subject, "site topographic factor", Optional.of(site.topographic()));
    to.number(subject, "site directionality factor", Optional.of(site.directionality()));
    to.length(subject, "site altitude", site.altitude());
    to.words(subject, "site enclosure", site.enclosure().value());
    to.amount(subject, "site roof slope", Kind.ANGLE, site.roofSlope());
    to.words(subject, "site edition of ASCE 7", Integer.toString(site.edition().value()));
    to.words(subject, "site corners", site.corners().value());
  }

  private String called(String floor) {
    return to.names().places().getOrDefault(floor, Name.floor(floor)).id();
  }

  private void temperature(Subject subject, String property, Quantity quantity) {
    to.put(subject, property, new Value.Amount(quantity, Kind.TEMPERATURE));
  }
}
