package mullwright.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;
import mullwright.syntax.Argument.Phrase.Part;
import mullwright.syntax.Expression;
import mullwright.syntax.Place;
import mullwright.syntax.Selection;

/**
 * Makes criteria from layers of property lines: what a later layer states takes the place of what
 * an earlier one does, fact by fact (wind by zone, slab deflection by floor).
 */
final class CriteriaReader {
  private final GridNames names;
  private final Map<String, Criteria.WindZone> wind = new LinkedHashMap<>();
  private final Map<String, Given<Length>> slab = new LinkedHashMap<>();
  private Optional<Given<String>> basis = Optional.empty();
  private boolean windUnread;
  private Optional<Given<Criteria.Temperature>> temperature = Optional.empty();
  private Optional<Given<Length>> drift = Optional.empty();
  private Optional<Given<Double>> driftRatio = Optional.empty();
  private Optional<Given<String>> exposure = Optional.empty();
  private Optional<Given<Double>> limit = Optional.empty();
  private final GlassCriteriaReader glass = new GlassCriteriaReader();
  private final WindSiteReader site = new WindSiteReader(PartSchema.WIND_PRESSURES);

  /**
   * @param names the wall's floors and rows, or null for a project: then places are left out
   */
  CriteriaReader(GridNames names) {
    this.names = names;
  }

  /**
   * Reads a layer over what is there.
   *
   * @param places takes what is wrong with the names of floors and rows
   */
  CriteriaReader over(Properties layer, Collector places) {
    new Zones(layer, places).read();
    windUnread |= layer.unread("wind");
    temperature(layer);
    slab(layer, places);
    drift(layer);
    glass.over(layer, names, places);
    if (layer.word("exposure").isPresent()) {
      exposure = layer.word("exposure");
    }
    layer.phrases("deflection").stream()
        .findFirst()
        .flatMap(CriteriaReader::ratio)
        .ifPresent(ratio -> limit = Optional.of(ratio));
    return this;
  }

  /**
   * What was read.
   *
   * @param into takes what all layers together lack
   */
  Criteria criteria(Origin takenFor, Collector into) {
    Optional<WindSite> site = this.site.site(takenFor, into);
    Optional<Origin> stated = this.site.origin();
    if (stated.isPresent() && !wind.isEmpty()) {
      into.misplaced(
          "wind is given both as pressures and as site data",
          "keep one of them: the pressures count as long as both stand",
          stated.get());
      site = Optional.empty();
    }
    if (stated.isPresent() && basis.filter(said -> said.value().equals("service")).isPresent()) {
      into.misplaced(
          "a wind speed of ASCE 7 gives ultimate pressures",
          "write wind ultimate; 0.6 of them is taken at service level",
          basis.get().origin());
    }
    // what seems to be missing may stand in the line that could not be read
    if (basis.isEmpty() && !windUnread && (stated.isPresent() || !wind.isEmpty())) {
      into.missing(
          "wind",
          "whether its pressures are service or ultimate",
          stated.isPresent() ? "wind ultimate" : "wind service",
          stated.orElseGet(() -> wind.values().iterator().next().origin()));
    }

    PartSchema.Default assumed =
        PartSchema.criteria().find("exposure").orElseThrow().byDefault().orElseThrow();
    return new Criteria(
        basis,
        new ArrayList<>(wind.values()),
        temperature,
        slab,
        drift,
        driftRatio,
        exposure.orElseGet(() -> Given.assumed(assumed.text(), takenFor, assumed.source())),
        limit,
        glass.criteria(takenFor),
        site);
  }

  private void temperature(Properties layer) {
    Optional<Given<Quantity>> least = Optional.empty();
    Optional<Given<Quantity>> most = Optional.empty();
    Optional<Given<Quantity>> set = Optional.empty();
    Origin origin = null;
    for (Phrase phrase : layer.phrases("metal")) {
      if (phrase.form() == 0) {
        least = phrase.quantity(0);
        most = phrase.quantity(1);
        origin = phrase.origin();
      } else {
        set = phrase.quantity(0);
      }
    }
    if (least.isEmpty() || most.isEmpty()) {
      return;
    }
    Quantity low = least.get().value();
    Quantity high = most.get().value();
    if (low.si().compareTo(high.si()) >= 0) {
      layer
          .reading()
          .collector()
          .misplaced(
              "the metal is not warmer at most than at least",
              "write the least temperature first, as -10 F to 150 F",
              origin);
      return;
    }
    if (set.isEmpty()) {
      layer
          .reading()
          .collector()
          .missing("metal temperature", "when the metal is set", "set at 60 F", origin);
      return;
    }
    temperature =
        Optional.of(Given.stated(new Criteria.Temperature(low, high, set.get().value()), origin));
  }

  private void drift(Properties layer) {
    Optional<Phrase> stated = layer.phrases("story").stream().findFirst();
    if (stated.isEmpty()) {
      return;
    }
    Phrase phrase = stated.get();
    Optional<Given<Length>> length = Optional.empty();
    Optional<Given<Double>> share = Optional.empty();
    if (PhrasePattern.spanRatio(phrase.capture(0).parts().get(0)) != null) {
      share = ratio(phrase).map(ratio -> Given.stated(1 / ratio.value(), ratio.origin()));
    } else if (phrase.isOf(0, Kind.RATIO)) {
      share =
          phrase
              .quantity(0, Kind.RATIO)
              .map(ratio -> Given.stated(ratio.value().toSi(), ratio.origin()));
    } else {
      length = phrase.length(0);
    }
    if (length.isPresent() || share.isPresent()) {
      drift = length;
      driftRatio = share;
    }
  }

  /** {@code L/240} and {@code 240} as 240. */
  /** A limit as a share of a length, {@code 1/175} or {@code L/175}; empty unless above zero. */
  static Optional<Given<Double>> ratio(Phrase phrase) {
    Expression divisor = PhrasePattern.spanRatio(phrase.capture(0).parts().get(0));
    Optional<Quantity> number =
        divisor == null
            ? phrase.quantity(0, Kind.RATIO).map(Given::value)
            : phrase.reading().values().quantity(divisor, Kind.RATIO, "limit");
    return number
        .map(Quantity::si)
        .filter(ratio -> ratio.compareTo(Rational.ZERO) > 0)
        .map(ratio -> Given.stated(ratio.toDouble(), phrase.origin()));
  }

  private void slab(Properties layer, Collector places) {
    Optional<Given<Length>> of = Optional.empty();
    int line = -1;
    Map<String, Given<Length>> own = new HashMap<>();
    for (Phrase phrase : layer.phrases("slab")) {
      if (phrase.form() == 0) {
        of = phrase.length(0);
        line = phrase.line();
      }
      if (phrase.line() != line && !phrase.said().broken()) {
        // floors, and no length before them
        layer.saysNothing("slab", phrase);
      }
      if (of.isEmpty() || phrase.line() != line) {
        continue;
      }
      int at = phrase.form() == 0 ? 1 : 0;
      List<String> floors =
          phrase.size() > at ? floors(phrase, phrase.capture(at).parts(), places) : List.of("");
      for (String floor : floors) {
        Given<Length> before = own.put(floor, of.get());
        if (before != null && !before.value().equals(of.get().value())) {
          conflict(layer, floor, before, of.get());
        }
        slab.put(floor, of.get());
      }
    }
  }

  private static void conflict(
      Properties layer, String floor, Given<Length> one, Given<Length> other) {
    Spot spot = layer.reading().spot();
    layer
        .reading()
        .collector()
        .problem(
            new ModelProblem.Conflict(
                "slab deflection",
                floor.isEmpty() ? "all floors" : floor,
                "deflection",
                spot.text(one.origin().range()),
                spot.text(other.origin().range()),
                one.origin(),
                other.origin()));
  }

  private List<String> floors(Phrase phrase, List<Part> parts, Collector places) {
    if (names == null) {
      return List.of();
    }
    Said said = phrase.said();
    Selection selection = PhrasePlaces.selection(parts);
    NameIndex known = names.heights().names();
    List<String> floors = new ArrayList<>();
    for (int index : new SelectionReader(said, places).list(selection, known).indices()) {
      if (names.heights().get(index).row() < 0) {
        floors.add(names.heights().get(index).name());
      }
    }
    return floors;
  }

  /** Reads the {@code wind} lines of a layer. */
  private final class Zones {
    private final Properties layer;
    private final Collector places;
    private final Map<String, Origin> own = new HashMap<>();
    private String name;
    private Phrase start;
    private Optional<Given<Quantity>> in;
    private Optional<Given<Quantity>> out;
    private Optional<Given<Length>> within;
    private Optional<Height> from;
    private Optional<Height> to;
    private boolean placed;
    private boolean found;

    Zones(Properties layer, Collector places) {
      this.layer = layer;
      this.places = places;
    }

    void read() {
      int line = -1;
      for (Phrase phrase : layer.phrases("wind")) {
        if (phrase.form() == 0) {
          basis = phrase.word(0);
          continue;
        }
        if (site.take(phrase)) {
          continue;
        }
        if (phrase.line() != line) {
          finish();
          begin(phrase);
          line = phrase.line();
        }
        take(phrase);
      }
      finish();
    }

    private void begin(Phrase phrase) {
      start = phrase;
      name = "field";
      in = Optional.empty();
      out = Optional.empty();
      within = Optional.empty();
      from = Optional.empty();
      to = Optional.empty();
      placed = false;
      found = false;
    }

    private void take(Phrase phrase) {
      Optional<Given<Quantity>> pressure = Optional.empty();
      boolean first = true;
      for (int i = 0; i < phrase.size(); i++) {
        PhrasePattern.Capture capture = phrase.capture(i);
        switch (capture.word()) {
          case "WORD" -> name = phrase.word(i).orElseThrow().value();
          case "PRESSURE" -> pressure = phrase.quantity(i);
          case "LENGTH" -> within = phrase.length(i);
          case "PLACE" -> {
            Optional<Height> height = place(phrase, capture.parts());
            placed = true;
            found |= height.isPresent();
            if (first) {
              from = height;
            } else {
              to = height;
            }
            first = false;
          }
          default -> {
            if (phrase.word(i).orElseThrow().value().equals("in")) {
              in = pressure;
            } else {
              out = pressure;
            }
          }
        }
      }
    }

    private Optional<Height> place(Phrase phrase, List<Part> parts) {
      if (names == null) {
        return Optional.empty();
      }
      Place place = PhrasePlaces.place(parts);
      return new PlaceReader(phrase.said(), names.heights(), places).one(place).map(Placed::height);
    }

    private void finish() {
      if (start == null || in.isEmpty() && out.isEmpty()) {
        return;
      }
      Origin origin = start.origin();
      Collector collector = layer.reading().collector();
      if (in.isEmpty() || out.isEmpty()) {
        String lacking = in.isEmpty() ? "in" : "out";
        collector.missing("wind " + name, "the pressure " + lacking, "32 psf " + lacking, origin);
        return;
      }
      Origin before = own.putIfAbsent(name, origin);
      if (before != null) {
        collector.duplicate("wind zone", name, before, origin);
        return;
      }
      // a zone of heights this wall does not have is not of this wall
      if (!placed || found || names == null) {
        wind.put(name, new Criteria.WindZone(name, in.get(), out.get(), within, from, to, origin));
      }
    }
  }
}
