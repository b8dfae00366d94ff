package mullwright.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/** Makes what fixes a frame: clip, anchor, spread plate, fastener, and parts of free facts. */
final class FixingParts {
  private static final String NOT_STATED = "not stated";

  private FixingParts() {}

  static Part.Clip clip(String name, Properties properties) {
    Given<Length> projection =
        properties
            .length("projection")
            .orElseGet(() -> Given.assumed(Length.ZERO, properties.origin(), NOT_STATED));
    return new Part.Clip(
        name, properties.origin(), properties.wordOr("metal"), projection, holes(properties));
  }

  static Part.Anchor anchor(String name, Properties properties) {
    Optional<Phrase> reach = properties.phrases("reach").stream().findFirst();
    Map<String, Given<Quantity>> capacities = new LinkedHashMap<>();
    for (Phrase phrase : properties.phrases("capacity")) {
      Optional<Given<Quantity>> force = phrase.quantity(0);
      if (force.isPresent()) {
        capacities.putIfAbsent(phrase.word(1).orElseThrow().value(), force.get());
      }
    }
    return new Part.Anchor(
        name,
        properties.origin(),
        properties.word("use"),
        properties.wordOr("metal"),
        boltLine(properties),
        reach.flatMap(phrase -> phrase.length(0)),
        reach.flatMap(phrase -> phrase.length(1)),
        properties.length("slot"),
        holes(properties),
        properties.length("height"),
        Map.copyOf(capacities));
  }

  private static Given<Part.BoltLine> boltLine(Properties properties) {
    Optional<Phrase> phrase = properties.phrases("bolt-line").stream().findFirst();
    Optional<Given<Length>> distance = phrase.flatMap(found -> found.length(0));
    if (distance.isEmpty()) {
      String source =
          PartSchema.of(PartKind.ANCHOR)
              .find("bolt-line")
              .orElseThrow()
              .byDefault()
              .orElseThrow()
              .source();
      return Given.assumed(new Part.BoltLine(Length.ZERO, true, true), properties.origin(), source);
    }
    boolean below = phrase.get().word(1).orElseThrow().value().equals("below");
    boolean top = !phrase.get().word(2).map(Given::value).orElse("top").equals("underside");
    return Given.stated(
        new Part.BoltLine(distance.get().value(), below, top), phrase.get().origin());
  }

  static Part.SpreadPlate spreadPlate(String name, Properties properties) {
    return new Part.SpreadPlate(
        name, properties.origin(), properties.wordOr("metal"), properties.length("thickness"));
  }

  static Part.Fastener fastener(String name, Properties properties) {
    return new Part.Fastener(
        name,
        properties.origin(),
        properties.wordOr("metal"),
        properties.length("diameter"),
        properties.length("length"));
  }

  /** A part of which only metal and free facts are kept. */
  static Part.Plain plain(PartKind kind, String name, Properties properties) {
    Map<String, Given<String>> facts = new LinkedHashMap<>(properties.facts());
    for (PartSchema.Property property : PartSchema.of(kind).properties()) {
      if (!property.word().equals("metal")) {
        properties.word(property.word()).ifPresent(fact -> facts.put(property.word(), fact));
      }
    }
    // a length is kept as written, but must be one
    properties.length("thickness");
    return new Part.Plain(kind, name, properties.origin(), properties.word("metal"), facts);
  }

  static List<Part.Hole> holes(Properties properties) {
    List<Part.Hole> holes = new ArrayList<>();
    for (Phrase phrase : properties.phrases("hole")) {
      Optional<Given<Length>> diameter = phrase.length(0);
      Optional<Given<Length>> along = phrase.length(1);
      Optional<Given<Length>> back = phrase.length(2);
      if (diameter.isPresent() && along.isPresent() && back.isPresent()) {
        holes.add(
            new Part.Hole(
                diameter.get().value(),
                along.get().value(),
                back.get().value(),
                phrase.word(3).map(Given::value),
                phrase.origin()));
      }
    }
    return List.copyOf(holes);
  }
}
