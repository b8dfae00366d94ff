package mullwright.model;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/** Makes site data of the wind from layers of property lines, fact by fact; a later layer wins. */
final class WindSiteReader {
  /** The patterns of {@code wind} that are site data, in the order of the schema. */
  static final List<String> PATTERNS =
      List.of(
          "speed SPEED",
          "exposure WORD",
          "roof height LENGTH",
          "building width LENGTH",
          "ground at LENGTH",
          "Kzt RATIO",
          "Kd RATIO",
          "altitude LENGTH",
          "enclosed|partially-enclosed",
          "roof slope ANGLE",
          "edition NUMBER",
          "corners both|left|right|none");

  private final int first;
  private final Map<String, Phrase> said = new HashMap<>();

  /**
   * @param first which of the patterns of {@code wind} is the first of {@link #PATTERNS}
   */
  WindSiteReader(int first) {
    this.first = first;
  }

  /** True if a phrase is site data, which is then kept. */
  boolean take(Phrase phrase) {
    if (phrase.form() < first) {
      return false;
    }
    said.put(PATTERNS.get(phrase.form() - first), phrase);
    return true;
  }

  /** Where the site data begin, if there are any. */
  Optional<Origin> origin() {
    return said(0).or(() -> said.values().stream().findFirst()).map(Phrase::origin);
  }

  private Optional<Phrase> said(int pattern) {
    return Optional.ofNullable(said.get(PATTERNS.get(pattern)));
  }

  /** The site, if what it needs is stated and can be; what is missing or cannot be is reported. */
  Optional<WindSite> site(Origin takenFor, Collector into) {
    if (said.isEmpty()) {
      return Optional.empty();
    }
    Origin origin = origin().orElseThrow();
    Optional<Given<Quantity>> speed = said(0).flatMap(phrase -> phrase.quantity(0));
    Optional<Given<String>> exposure = said(1).flatMap(phrase -> phrase.word(0));
    Optional<Given<Length>> roof = said(2).flatMap(phrase -> phrase.length(0));
    Optional<Given<Length>> width = said(3).flatMap(phrase -> phrase.length(0));
    Optional<Given<String>> enclosure = said(8).flatMap(phrase -> phrase.word(0));
    boolean whole =
        needed(0, "its basic speed", "wind speed 115 mph", origin, into)
            & needed(1, "its exposure", "wind exposure C", origin, into)
            & needed(2, "the mean roof height", "wind roof height 50'-0\"", origin, into)
            & needed(3, "the building's least width", "wind building width 80'-0\"", origin, into)
            & needed(8, "how the building is enclosed", "wind enclosed", origin, into);
    whole &=
        exposure
            .filter(word -> !List.of("B", "C", "D").contains(word.value()))
            .map(
                word ->
                    wrong(
                        "\"" + word.value() + "\" is no exposure of ASCE 7",
                        "exposure is B, C or D",
                        word.origin(),
                        into))
            .orElse(true);
    whole &= within(speed.map(WindSiteReader::si), "wind speed", 0.1, 120, "up to 268 mph", into);
    whole &= within(roof.map(WindSiteReader::metres), "roof height", 0.1, 213, "up to 700'", into);
    whole &=
        within(width.map(WindSiteReader::metres), "building width", 0.1, 1e5, "more than 0", into);
    Optional<Given<Double>> topographic = ratio(5);
    Optional<Given<Double>> directionality = ratio(6);
    Optional<Given<Length>> altitude = said(7).flatMap(phrase -> phrase.length(0));
    whole &= within(topographic, "Kzt", 1, 4, "from 1 to 4", into);
    whole &= within(directionality, "Kd", 0.8, 1, "from 0.80 to 1", into);
    whole &=
        within(altitude.map(WindSiteReader::metres), "altitude", -100, 5000, "up to 5000 m", into);
    Optional<Given<Integer>> edition =
        said(10)
            .flatMap(phrase -> phrase.quantity(0, Kind.RATIO))
            .map(number -> Given.stated((int) number.value().toSi(), number.origin()));
    whole &=
        edition
            .filter(year -> year.value() != 2016 && year.value() != 2022)
            .map(
                year ->
                    wrong(
                        "edition " + year.value() + " of ASCE 7 is not known",
                        "editions 2016 and 2022 are",
                        year.origin(),
                        into))
            .orElse(true);
    if (!whole
        || speed.isEmpty()
        || exposure.isEmpty()
        || roof.isEmpty()
        || width.isEmpty()
        || enclosure.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new WindSite(
            speed.get(),
            exposure.get(),
            roof.get(),
            width.get(),
            said(4)
                .flatMap(phrase -> phrase.length(0))
                .orElseGet(() -> Given.assumed(Length.ZERO, takenFor, "the wall's datum")),
            topographic.orElseGet(() -> Given.assumed(1.0, takenFor, "flat ground, ASCE 7")),
            directionality.orElseGet(
                () -> Given.assumed(0.85, takenFor, "ASCE 7, components and cladding")),
            altitude,
            enclosure.get(),
            said(9).flatMap(phrase -> phrase.quantity(0)),
            edition.orElseGet(() -> Given.assumed(2016, takenFor, "ASCE 7-16")),
            said(11)
                .flatMap(phrase -> phrase.word(0))
                .orElseGet(() -> Given.assumed("both", takenFor, "the safe side")),
            origin));
  }

  private Optional<Given<Double>> ratio(int pattern) {
    return said(pattern)
        .flatMap(phrase -> phrase.quantity(0, Kind.RATIO))
        .map(number -> Given.stated(number.value().toSi(), number.origin()));
  }

  private static Given<Double> si(Given<Quantity> given) {
    return Given.stated(given.value().toSi(), given.origin());
  }

  private static Given<Double> metres(Given<Length> given) {
    return Given.stated(given.value().toMetres(), given.origin());
  }

  private boolean needed(int pattern, String what, String offer, Origin origin, Collector into) {
    if (said(pattern).isPresent()) {
      return true;
    }
    into.missing("wind from site data", what, offer, origin);
    return false;
  }

  private static boolean within(
      Optional<Given<Double>> value,
      String what,
      double least,
      double most,
      String range,
      Collector into) {
    return value
        .filter(given -> given.value() < least || given.value() > most)
        .map(given -> wrong("that " + what + " cannot be", "it is " + range, given.origin(), into))
        .orElse(true);
  }

  private static boolean wrong(String what, String why, Origin origin, Collector into) {
    into.misplaced(what, why, origin);
    return false;
  }
}
