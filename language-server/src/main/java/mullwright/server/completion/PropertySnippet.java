package mullwright.server.completion;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import mullwright.model.PartKind;
import mullwright.model.PartSchema;
import mullwright.model.Role;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.LengthReader;
import mullwright.quantity.UnitSystem;
import mullwright.syntax.Argument;
import mullwright.syntax.Argument.Phrase.Part.Plain;
import mullwright.syntax.Statement;

/** A property with tab stops where its first pattern has a place for something. */
final class PropertySnippet {
  private static final Optional<String> NO_SAMPLE = Optional.empty();

  private final Names names;
  private final Snippets snippets;
  private final UnitSystem system;
  private final List<Statement> beside;

  /**
   * @param beside the statements of the block so far
   */
  PropertySnippet(Names names, Snippets snippets, UnitSystem system, List<Statement> beside) {
    this.names = names;
    this.snippets = snippets;
    this.system = system;
    this.beside = beside;
  }

  /** The property with tab stops; what may be left out is left out. */
  String of(PartSchema.Property property) {
    Stops stops = new Stops().text(property.word());
    if (property.word().equals("wind") && isGiven("wind")) {
      return pressures(stops.text(" "));
    }
    String pattern = property.patterns().get(0);
    // what is said of all already is said again of some only
    String whole = isGiven(property.word()) ? pattern.replace("[NAMES]", "NAMES") : pattern;
    String needed = whole.replaceAll("\\[[^\\]]*\\]", " ");
    for (String token : needed.trim().split("\\s+")) {
      if (!token.isEmpty()) {
        stops.text(" ");
        place(token, property.word(), stops);
      }
    }
    return stops.end().toString();
  }

  private boolean isGiven(String word) {
    return beside.stream().anyMatch(it -> it.keyword().text().equals(word));
  }

  /** Once the wind is said to be service or ultimate, what it presses with follows. */
  private String pressures(Stops stops) {
    boolean us = system == UnitSystem.US;
    List<String> free =
        PropertyOffers.ZONES.stream()
            .filter(
                zone ->
                    beside.stream()
                        .flatMap(it -> it.argument(Argument.Phrase.class).stream())
                        .noneMatch(
                            it ->
                                it.parts().get(0) instanceof Plain one
                                    && one.word().text().equals(zone)))
            .toList();
    stops.choice(free, "zone").text(" ").stop(us ? "32 psf" : "1.5 kPa");
    return stops.text(" in, ").stop(us ? "36 psf" : "1.7 kPa").text(" out").end().toString();
  }

  private void place(String token, String word, Stops stops) {
    Optional<String> usual = Samples.of(word, stops.count(), system);
    if (usual.isPresent() && !isFixed(token)) {
      Length length = LengthReader.read(usual.get()).value().orElse(null);
      stops.stop(length == null ? usual.get() : snippets.exact(length));
      return;
    }
    if (isFixed(token)) {
      if (token.contains("|")) {
        stops.choice(List.of(token.split("\\|")), token);
      } else {
        stops.text(token);
      }
      return;
    }
    for (PartKind kind : PartKind.values()) {
      if (kind.name().equals(token)) {
        stops.choice(parts(kind, word), kind.spelling());
        return;
      }
    }
    switch (token) {
      case "WORD", "WORDS" ->
          stops.choice(PropertyOffers.usual(word, names), token.toLowerCase(Locale.ROOT));
      case "COLOUR" -> stops.text("\"").stop("#808080").text("\"");
      case "TEXT" -> stops.text("\"").stop("text").text("\"");
      case "PLACE", "NAMES" ->
          stops.choice(names.floors().stream().map(Offer::text).toList(), "L1");
      case "NUMBER" -> stops.stop("1");
      case "SPAN_RATIO" -> stops.stop("L/175");
      default ->
          stops.stop(sample(token, stops.count() > 0).orElse(token.toLowerCase(Locale.ROOT)));
    }
  }

  private static boolean isFixed(String token) {
    return PhraseSteps.isFixed(token) || token.equals("x");
  }

  private List<String> parts(PartKind kind, String word) {
    for (Role role : Role.values()) {
      if (kind == PartKind.PROFILE && role.spelling().equals(word)) {
        return names.profilesFor(role).stream().map(Offer::text).toList();
      }
    }
    return names.parts(List.of(kind)).stream().map(Offer::text).toList();
  }

  private static String temperature(boolean us, boolean hot) {
    return hot ? us ? "150 F" : "65 C" : us ? "-10 F" : "-25 C";
  }

  /**
   * A value of that kind in the units of the file, to be written over.
   *
   * @param hot true for the second of two temperatures
   */
  private Optional<String> sample(String token, boolean hot) {
    boolean us = system == UnitSystem.US;
    for (Kind kind : Kind.values()) {
      if (kind.name().equals(token)) {
        return switch (kind) {
          case LENGTH -> Optional.of(snippets.length("1\"", "25"));
          case PRESSURE -> Optional.of(us ? "32 psf" : "1.5 kPa");
          case STRESS -> Optional.of(us ? "36 ksi" : "250 MPa");
          case FORCE -> Optional.of(us ? "500 lb" : "2 kN");
          case AREA -> Optional.of(us ? "2 in2" : "1300 mm2");
          case SECTION_MODULUS -> Optional.of(us ? "3 in3" : "50e3 mm3");
          case SECOND_MOMENT -> Optional.of(us ? "9 in4" : "4e6 mm4");
          case MASS_PER_LENGTH -> Optional.of(us ? "2.4 lb/ft" : "3.6 kg/m");
          case TEMPERATURE -> Optional.of(temperature(us, hot));
          case U_FACTOR -> Optional.of(us ? "0.3 Btu/hft2F" : "1.7 W/m2K");
          case LINEAR_TRANSMITTANCE -> Optional.of(us ? "0.03 Btu/hftF" : "0.05 W/mK");
          case SPEED -> Optional.of(us ? "115 mph" : "51 m/s");
          case ANGLE -> Optional.of("90 deg");
          case RATIO -> Optional.of("5 %");
          default -> NO_SAMPLE;
        };
      }
    }
    return NO_SAMPLE;
  }
}
