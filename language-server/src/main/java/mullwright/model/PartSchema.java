package mullwright.model;

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

    private Property assumed(String text, String source) {
      Default taken = new Default(text, source);
      return new Property(word, patterns, meaning, Optional.of(taken), repeats);
    }

    private Property repeated() {
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

  private static final String PRACTICE = "common practice";
  private static final Map<PartKind, PartSchema> PARTS = parts();

  /** Patterns of {@code wind} before those that are site data. */
  static final int WIND_PRESSURES = 2;

  private static final PartSchema CRITERIA =
      new PartSchema(
          "criteria",
          false,
          wind(),
          of(
              "metal",
              "the metal's surface temperature: least, most, and when set",
              "temperature TEMPERATURE to TEMPERATURE",
              "set at TEMPERATURE"),
          of(
                  "slab",
                  "live-load deflection of the slab edge, of all floors or of those named",
                  "deflection LENGTH [NAMES]",
                  "NAMES")
              .repeated(),
          of(
              "story",
              "drift of a storey, as a length or a share of its height",
              "drift LENGTH",
              "drift RATIO",
              "drift SPAN_RATIO"),
          of("exposure", "what the metal meets: outdoor, sheltered, coastal, indoor", "WORD")
              .assumed("outdoor", PRACTICE),
          of(
              "deflection",
              "a stricter limit of deflection over span than the default",
              "limit SPAN_RATIO",
              "limit NUMBER"),
          of(
                  "safety",
                  "a walking surface that safety glazing is measured from, in place of the floors",
                  "floor line LENGTH above|below NAMES",
                  "floor line NAMES",
                  "floor line LENGTH")
              .repeated(),
          of(
                  "glass",
                  "the least bite that may be left, or how far the centre of a lite may bend",
                  "least bite LENGTH",
                  "deflection limit SPAN_RATIO",
                  "deflection limit LENGTH")
              .repeated(),
          of("importance", "importance factor of the building in earthquakes", "NUMBER")
              .assumed("1", "ASCE 7, risk category I or II"));

  private static Property wind() {
    List<String> patterns = new ArrayList<>();
    patterns.add("service|ultimate");
    patterns.add("[WORD] PRESSURE in|out [within LENGTH of ends] [from PLACE to PLACE]");
    patterns.addAll(WindSiteReader.PATTERNS);
    return new Property(
        "wind",
        patterns,
        "whether pressures are service or ultimate; the pressures of a zone, in and out; or data of"
            + " site and building from which they follow",
        Optional.empty(),
        true);
  }

  private static final PartSchema FABRICATION =
      new PartSchema(
          "fabrication",
          true,
          of("kerf", "lost at each cut", "LENGTH").assumed("1/8\"", PRACTICE),
          of("end-trim", "taken off each end of a bar", "LENGTH").assumed("1/2\"", PRACTICE),
          of("least-drop", "shortest rest worth keeping", "LENGTH").assumed("24\"", PRACTICE),
          of("pieces-per-bar", "most pieces cut from one bar; any number unless stated", "NUMBER"),
          of(
                  "on-hand",
                  "bars on the rack that cost nothing: how many, how long, of which part, and in"
                      + " which finish if only that one will do",
                  "NUMBER x LENGTH of WORD [in WORD]")
              .repeated(),
          of("cut-tolerance", "how far a cut may be off, either way", "LENGTH"),
          of("hole-tolerance", "how far a hole may be off, either way", "LENGTH"),
          of("perimeter-joint", "width of the sealed joint round the frame", "LENGTH")
              .assumed("1/2\"", PRACTICE),
          of("waste", "share bought more for loss, of all things or of one sort", "RATIO [WORD]")
              .repeated(),
          of(
                  "attic",
                  "share bought more to keep in store, of all things or of one sort",
                  "RATIO [WORD]")
              .repeated());

  private static final PartSchema PROJECT =
      new PartSchema(
          "project", true, of("revision", "which issue of the drawings this is", "WORDS"));

  private static final PartSchema WALL =
      new PartSchema(
          "wall",
          false,
          of("system", "the system the wall is made of", "SYSTEM"),
          of("finish", "the finish, of all sides or of one", "WORD [outside|inside]"));

  private final String kind;
  private final boolean open;
  private final Map<String, Property> properties = new LinkedHashMap<>();
  private final Map<String, List<PhrasePattern>> patterns = new LinkedHashMap<>();

  private PartSchema(String kind, boolean open, Property... properties) {
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
    return CRITERIA;
  }

  /** The lines of {@code fabrication}. */
  public static PartSchema fabrication() {
    return FABRICATION;
  }

  /** The lines of {@code project} beside its blocks. */
  public static PartSchema project() {
    return PROJECT;
  }

  /** The lines of {@code wall} beside its blocks. */
  public static PartSchema wall() {
    return WALL;
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

  private static Property of(String word, String meaning, String... patterns) {
    return new Property(word, List.of(patterns), meaning, Optional.empty(), false);
  }

  private static Property metal(String assumed) {
    Property metal = of("metal", "what it is made of", "WORD");
    return assumed.isEmpty() ? metal : metal.assumed(assumed, PRACTICE);
  }

  private static Property stock() {
    return of(
            "stock",
            "lengths it is bought in, each with what a bar costs if that is to count",
            "LENGTH [cost NUMBER]")
        .repeated();
  }

  private static Property hole() {
    return of(
            "hole",
            "a hole: diameter, place along from the part's datum, depth back from the glass face",
            "LENGTH at LENGTH back LENGTH [for FASTENER]")
        .repeated();
  }

  private static Property outline() {
    return of(
            "outline",
            "rectangles the section is made of, the first from its back, on its centre line",
            "[plus] hollow LENGTH x LENGTH wall LENGTH [at LENGTH]",
            "[plus] solid LENGTH x LENGTH [at LENGTH]")
        .repeated();
  }

  private static Map<PartKind, PartSchema> parts() {
    Map<PartKind, PartSchema> parts = new EnumMap<>(PartKind.class);
    frameParts(parts);
    fixings(parts);
    coversAndGlass(parts);
    put(
        parts,
        PartKind.FINISH,
        true,
        metal(""),
        of("thickness", "how thick it is", "LENGTH"),
        of("kind", "which sort: paint, anodised", "WORD"),
        of("colour", "as it is shown, in quotes: red, green and blue, #5b4636", "COLOUR"));
    for (PartKind kind : PartKind.values()) {
      if (!parts.containsKey(kind)) {
        put(
            parts,
            kind,
            true,
            metal(""),
            of("thickness", "how thick it is", "LENGTH"),
            of("kind", "which sort: paint, pad, tape, coating, washer, plating", "WORD"));
      }
    }
    return parts;
  }

  private static void put(
      Map<PartKind, PartSchema> parts, PartKind kind, boolean open, Property... properties) {
    Stream<Property> common =
        Stream.of(
            of("description", "in words", "TEXT"),
            of("source", "where the data comes from", "TEXT"));
    List<Property> all = new ArrayList<>(List.of(properties));
    common.forEach(all::add);
    parts.put(kind, new PartSchema(kind.spelling(), open, all.toArray(Property[]::new)));
  }

  private static void frameParts(Map<PartKind, PartSchema> parts) {
    put(
        parts,
        PartKind.SYSTEM,
        false,
        of("mullion", "profile between two bays", "PROFILE"),
        of("jamb", "profile at an end", "PROFILE"),
        of("corner", "profile at a corner", "PROFILE"),
        of("sill", "profile of rows named sill", "PROFILE"),
        of("head", "profile of rows named head", "PROFILE"),
        of("intermediate", "profile of all other rows", "PROFILE"),
        of("shear-block", "what holds a horizontal's ends", "SHEAR_BLOCK"),
        of("clip", "clip at sill and head, or at one of them", "CLIP [at sill|head]").repeated(),
        of("sill-clip", "clip at the sill", "CLIP"),
        of("head-clip", "clip at the head", "CLIP"),
        of("sleeve", "splice sleeve", "SLEEVE"),
        of("pressure-plate", "pressure plate", "PRESSURE_PLATE"),
        of("face-cap", "face cap", "FACE_CAP"),
        of("gasket", "gasket, outdoors and indoors", "GASKET [indoor|outdoor]").repeated(),
        of("setting-block", "setting block", "SETTING_BLOCK"),
        of("zone-dam", "zone dam", "ZONE_DAM"),
        of("sealant", "sealant", "SEALANT"),
        of("insulation", "insulation behind spandrel lites", "INSULATION"),
        of("plate-fastener", "fastener of the pressure plates", "FASTENER"),
        of(
            "glass-plane",
            "from the outer face of the glass (z = 0) to the back of the profiles; their depth"
                + " unless stated",
            "LENGTH"));
    put(
        parts,
        PartKind.PROFILE,
        false,
        of("role", "what it does", "mullion|jamb|corner|sill|head|intermediate")
            .assumed("mullion", PRACTICE),
        of("face", "width of metal seen in elevation", "LENGTH"),
        of("sightline", "width the glass leaves to be seen; the face unless stated", "LENGTH"),
        of("depth", "out of the wall", "LENGTH"),
        of("area", "area of the section", "AREA"),
        of("Ix", "second moment for wind, bending out of the plane", "SECOND_MOMENT"),
        of("Iy", "second moment in the plane of the wall", "SECOND_MOMENT"),
        of(
            "Sx",
            "section modulus for wind, at the outer and the inner fibre",
            "SECTION_MODULUS [outside|inside]"),
        of(
            "Zx",
            "plastic section modulus for wind; from the outline unless stated",
            "SECTION_MODULUS"),
        of("Sy", "section modulus in the plane of the wall", "SECTION_MODULUS"),
        of("J", "torsion constant", "SECOND_MOMENT"),
        of("mass", "mass per length; area times density unless stated", "MASS_PER_LENGTH"),
        metal("aluminium"),
        of("alloy", "alloy and temper", "WORDS"),
        stock(),
        of(
                "bite",
                "how far the glass reaches in, at both sides or one",
                "LENGTH [left|right|below|above]")
            .assumed("1/2\"", PRACTICE),
        of(
                "edge-clearance",
                "from the glass edge to metal, at both sides or one",
                "LENGTH [left|right|below|above]")
            .assumed("1/4\"", PRACTICE),
        of("end-allowance", "clearance of a horizontal at each end", "LENGTH")
            .assumed("1/32\"", PRACTICE),
        of(
            "leg",
            "of a corner: from the line to the sightline, on both faces or one",
            "LENGTH [left|right]"),
        of("sleeve", "splice sleeve it takes", "SLEEVE"),
        of("U", "thermal transmittance of the frame made with it, fasteners included", "U_FACTOR"),
        hole(),
        of(
            "notch",
            "cut from each end of a horizontal: along it, and back from its glass side",
            "LENGTH back LENGTH"),
        outline());
    put(
        parts,
        PartKind.REINFORCEMENT,
        false,
        metal("steel"),
        of("Ix", "second moment for wind", "SECOND_MOMENT"),
        of("Sx", "section modulus for wind", "SECTION_MODULUS"),
        of("yield", "yield strength of steel", "STRESS")
            .assumed("36 ksi", "plain steel (ASTM A36), from memory"),
        of("mass", "mass per length", "MASS_PER_LENGTH"),
        stock(),
        outline());
    put(
        parts,
        PartKind.SLEEVE,
        false,
        of("length", "how long it is", "LENGTH"),
        of("engagement", "how far it reaches into each length; half of it unless stated", "LENGTH"),
        of("fixed", "the end that is screwed", "lower|upper").assumed("lower", PRACTICE),
        metal("aluminium"),
        hole());
    put(
        parts,
        PartKind.SHEAR_BLOCK,
        false,
        metal("aluminium"),
        of("length", "along the horizontal", "LENGTH"),
        hole(),
        of("edge-distance", "least from a hole's centre to an edge", "LENGTH"),
        of("entry", "whether a horizontal goes on from the front or slides on endwise", "front|end")
            .assumed("front", PRACTICE));
  }

  private static void fixings(Map<PartKind, PartSchema> parts) {
    put(
        parts,
        PartKind.CLIP,
        false,
        metal("aluminium"),
        of("projection", "how far it stands out", "LENGTH"),
        hole());
    put(
        parts,
        PartKind.ANCHOR,
        false,
        of("use", "what it may hold; both unless stated", "dead-load|wind-load"),
        metal("steel"),
        of(
                "bolt-line",
                "where its bolts sit against the slab",
                "LENGTH below|above [top|underside] [of] [slab]")
            .assumed("0\" below top of slab", PRACTICE),
        of("reach", "nearest and furthest slab edge it spans", "LENGTH to LENGTH"),
        of("slot", "length of its slots", "LENGTH"),
        hole(),
        of("height", "along the mullion", "LENGTH"),
        of("capacity", "what the engineer gave, by direction", "FORCE down|up|in|out").repeated());
    put(
        parts,
        PartKind.SPREAD_PLATE,
        false,
        metal("steel"),
        of("thickness", "how thick it is", "LENGTH"));
    put(
        parts,
        PartKind.FASTENER,
        true,
        metal(""),
        of("diameter", "of the shank", "LENGTH"),
        of("length", "under the head", "LENGTH"),
        of("head", "form of the head", "WORDS"));
  }

  private static void coversAndGlass(Map<PartKind, PartSchema> parts) {
    put(
        parts,
        PartKind.PRESSURE_PLATE,
        false,
        metal("aluminium"),
        of("width", "how wide it is", "LENGTH"),
        stock(),
        of("end-gap", "clearance at each end of a horizontal plate", "LENGTH")
            .assumed("1/8\"", PRACTICE),
        of("fastener", "what holds it", "FASTENER"),
        of("weeps", "the side of a horizontal plate its weeps are on", "upper|lower")
            .assumed("upper", PRACTICE),
        of("spacing", "most from fastener to fastener", "LENGTH").assumed("9\"", PRACTICE),
        of("end-distance", "first fastener from the end", "LENGTH").assumed("2\"", PRACTICE));
    put(
        parts,
        PartKind.FACE_CAP,
        false,
        metal("aluminium"),
        of("face", "width seen in elevation", "LENGTH"),
        stock(),
        of("end-gap", "clearance at each end of a horizontal cap", "LENGTH")
            .assumed("1/32\"", PRACTICE));
    put(
        parts,
        PartKind.GLASS,
        false,
        of("ply", "a pane: its designation, then treatment and tint", "LENGTH [WORDS]", "WORDS")
            .repeated(),
        of("space", "a cavity, then what fills it", "LENGTH [WORDS]", "WORDS").repeated(),
        of("interlayer", "what joins two plies", "LENGTH [WORDS]", "WORDS").repeated(),
        of("coating", "a coating and its surface, counted from outdoors", "WORDS surface NUMBER")
            .repeated(),
        of("opacified", "cannot be seen through", "[surface NUMBER]"),
        of("safety", "rated as safety glazing", "yes|no"),
        of("U", "thermal transmittance", "U_FACTOR"),
        of("limit", "largest width and height that are made", "LENGTH x LENGTH"),
        of("least", "smallest width and height that are made", "LENGTH x LENGTH"),
        of("largest-area", "largest area that is made", "AREA"),
        of(
            "shear-modulus",
            "of its interlayers under wind at their warmest, from their maker",
            "STRESS"),
        of(
            "edge-psi",
            "linear transmittance where its edge meets the frame",
            "LINEAR_TRANSMITTANCE"),
        of("bite", "in place of the profile's", "LENGTH"),
        of("billed", "width and height are billed rounded up to a multiple of it", "LENGTH"));
  }
}
