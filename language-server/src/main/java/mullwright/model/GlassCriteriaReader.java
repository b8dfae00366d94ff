package mullwright.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.syntax.Argument.Phrase.Part;

/** Makes what is asked of the glass from layers of property lines; a later layer wins. */
final class GlassCriteriaReader {
  private static final String PRACTICE = "common practice";

  private List<Height> floorLines = List.of();
  private Optional<Given<Double>> importance = Optional.empty();
  private Optional<Given<Double>> ratio = Optional.empty();
  private Optional<Given<Length>> most = Optional.empty();
  private Optional<Given<Length>> bite = Optional.empty();

  /**
   * Reads a layer over what is there.
   *
   * @param names the wall's floors and rows, or null for a project alone
   * @param places takes what is wrong with their names
   */
  void over(Properties layer, GridNames names, Collector places) {
    List<Height> lines = new ArrayList<>();
    for (Phrase phrase : layer.phrases("safety")) {
      if (names != null) {
        lines.addAll(places(phrase, names, places));
      }
    }
    if (!lines.isEmpty()) {
      floorLines = lines;
    }
    layer.phrases("importance").stream()
        .findFirst()
        .flatMap(phrase -> phrase.quantity(0, Kind.RATIO))
        .map(number -> Given.stated(number.value().toSi(), number.origin()))
        .ifPresent(number -> importance = Optional.of(number));
    for (Phrase phrase : layer.phrases("glass")) {
      if (phrase.form() == 0) {
        bite = phrase.length(0);
      } else if (phrase.form() == 1) {
        ratio = CriteriaReader.ratio(phrase);
        most = Optional.empty();
      } else {
        most = phrase.length(0);
        ratio = Optional.empty();
      }
    }
  }

  private static List<Height> places(Phrase phrase, GridNames names, Collector places) {
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < phrase.size(); i++) {
      parts.addAll(phrase.capture(i).parts());
    }
    PlaceReader reader = new PlaceReader(phrase.said(), names.heights(), places);
    return reader.all(PhrasePlaces.place(parts)).stream().map(Placed::height).toList();
  }

  GlassCriteria criteria(Origin takenFor) {
    return new GlassCriteria(
        floorLines,
        importance.orElseGet(() -> Given.assumed(1.0, takenFor, "ASCE 7, risk category I or II")),
        ratio,
        most,
        bite.orElseGet(() -> Given.assumed(Length.ofInches(1, 8), takenFor, PRACTICE)));
  }
}
