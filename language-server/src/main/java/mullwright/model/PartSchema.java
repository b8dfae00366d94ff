package mullwright.model;

import static mullwright.model.PropertyKinds.metal;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The properties of catalog parts, criteria, fabrication, project and wall, as data: reading,
 * completion, hovers and the printed reference all take them from here.
 *
 * <p>A pattern tells how one comma-separated phrase after the property's word is written: words in
 * small letters stand as they are, {@code a|b} is a choice, {@code [ ]} may be left out, and
 * capitals are a value: a {@link mullwright.quantity.Kind}, a {@link PartKind} for the name of such
 * a part, or
 *
 * <ul>
 *   <li>{@code NUMBER} a whole number, {@code SPAN_RATIO} {@code L/240};
 *   <li>{@code WORD} one word, {@code WORDS} all that follows, {@code TEXT} text in quotes, {@code
 *       COLOUR} red, green and blue as {@code "#5b4636"};
 *   <li>{@code PLACE} a floor, a row, a height above or below one, or a length;
 *   <li>{@code NAMES} names and ranges of names.
 * </ul>
 */
public final class PartSchema {
  /**
   * A property.
   *
   * @param word its first word
   * @param patterns how a phrase may be written; any of them
   * @param meaning one sentence
   * @param byDefault what is taken when it is not stated, if anything is
   * @param repeats true if it may stand on several lines
   */
  public record Property(
      String word,
      List<String> patterns,
      String meaning,
      Optional<Default> byDefault,
      boolean repeats) {
    public Property {
      patterns = List.copyOf(patterns);
    }

    /** The same, with what is taken when it is not stated. */
    Property assumed(String text, String source) {
      Default taken = new Default(text, source);
      return new Property(word, patterns, meaning, Optional.of(taken), repeats);
    }

    /** The same, on as many lines as one likes. */
    Property repeated() {
      return new Property(word, patterns, meaning, byDefault, true);
    }

    /** The patterns as one line, for messages. */
    public String pattern() {
      return String.join(" or ", patterns);
    }
  }

  /**
   * What is taken when nothing is stated.
   *
   * @param text as it would be written
   * @param source publication, or "common practice"
   */
  public record Default(String text, String source) {}

  private static final Map<PartKind, PartSchema> PARTS = parts();

  /** Patterns of {@code wind} before those that are site data. */
  public static final int WIND_PRESSURES = 2;

  private final String kind;
  private final boolean open;
  private final Map<String, Property> properties = new LinkedHashMap<>();
  private final Map<String, List<PhrasePattern>> patterns = new LinkedHashMap<>();

  PartSchema(String kind, boolean open, Property... properties) {
    this.kind = kind;
    this.open = open;
    for (Property property : properties) {
      this.properties.put(property.word(), property);
      this.patterns.put(
          property.word(), property.patterns().stream().map(PhrasePattern::of).toList());
    }
  }

  /** The properties of a kind of part. */
  public static PartSchema of(PartKind kind) {
    return PARTS.get(kind);
  }

  /** The lines of {@code criteria}. */
  public static PartSchema criteria() {
    return ProjectSchema.CRITERIA;
  }

  /** The lines of {@code fabrication}. */
  public static PartSchema fabrication() {
    return ProjectSchema.FABRICATION;
  }

  /** The lines of {@code project} beside its blocks. */
  public static PartSchema project() {
    return ProjectSchema.PROJECT;
  }

  /** The lines of {@code wall} beside its blocks. */
  public static PartSchema wall() {
    return ProjectSchema.WALL;
  }

  /** What the properties are of: {@code profile}, {@code criteria}. */
  public String kind() {
    return kind;
  }

  /** True if other words are kept as facts instead of being refused. */
  public boolean open() {
    return open;
  }

  /** All properties, in the order of the reference. */
  public List<Property> properties() {
    return List.copyOf(properties.values());
  }

  /** The property of that first word. */
  public Optional<Property> find(String word) {
    return Optional.ofNullable(properties.get(word));
  }

  List<PhrasePattern> patterns(String word) {
    return patterns.get(word);
  }

  private static Map<PartKind, PartSchema> parts() {
    Map<PartKind, PartSchema> parts = new EnumMap<>(PartKind.class);
    FrameSchema.addTo(parts);
    FixingSchema.addTo(parts);
    CoverSchema.addTo(parts);
    put(
        parts,
        PartKind.FINISH,
        true,
        metal(""),
        PropertyKinds.of("thickness", "how thick it is", "LENGTH"),
        PropertyKinds.of("kind", "which sort: paint, anodised", "WORD"),
        PropertyKinds.of(
            "colour", "as it is shown, in quotes: red, green and blue, #5b4636", "COLOUR"));
    for (PartKind kind : PartKind.values()) {
      if (!parts.containsKey(kind)) {
        put(
            parts,
            kind,
            true,
            metal(""),
            PropertyKinds.of("thickness", "how thick it is", "LENGTH"),
            PropertyKinds.of(
                "kind", "which sort: paint, pad, tape, coating, washer, plating", "WORD"));
      }
    }
    return parts;
  }

  /** Adds a kind with its properties and those that every kind has. */
  static void put(
      Map<PartKind, PartSchema> parts, PartKind kind, boolean open, Property... properties) {
    Stream<Property> common =
        Stream.of(
            PropertyKinds.of("description", "in words", "TEXT"),
            PropertyKinds.of("source", "where the data comes from", "TEXT"));
    List<Property> all = new ArrayList<>(List.of(properties));
    common.forEach(all::add);
    parts.put(kind, new PartSchema(kind.spelling(), open, all.toArray(Property[]::new)));
  }
}
