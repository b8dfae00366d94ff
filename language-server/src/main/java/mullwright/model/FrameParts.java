package mullwright.model;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.quantity.QuantityReader;
import mullwright.quantity.Rational;

/** Makes the parts a frame is cut from: system, profile, reinforcement, sleeve, shear block. */
final class FrameParts {
  private static final String NOT_STATED = "not stated";
  // EN 1999-1-1 and EN 1993-1-1, from memory
  private static final Rational ALUMINIUM_DENSITY = Rational.of(2700);
  private static final Rational STEEL_DENSITY = Rational.of(7850);

  private FrameParts() {}

  static Part.WallSystem system(String name, Properties properties) {
    Map<Role, Given<String>> profiles = new EnumMap<>(Role.class);
    for (Role role : Role.values()) {
      properties.word(role.spelling()).ifPresent(profile -> profiles.put(role, profile));
    }
    Map<PartKind, Given<String>> parts = new EnumMap<>(PartKind.class);
    for (PartKind kind : PartKind.values()) {
      String word = kind == PartKind.FASTENER ? "plate-fastener" : kind.spelling();
      if (kind != PartKind.CLIP && PartSchema.of(PartKind.SYSTEM).find(word).isPresent()) {
        properties.word(word).ifPresent(part -> parts.put(kind, part));
      }
    }
    Optional<Given<String>> sill = properties.word("sill-clip");
    Optional<Given<String>> head = properties.word("head-clip");
    for (Phrase clip : properties.phrases("clip")) {
      String at = clip.word(1).map(Given::value).orElse("");
      if (at.isEmpty()) {
        clip.word(0).ifPresent(part -> parts.put(PartKind.CLIP, part));
      } else if (at.equals("sill")) {
        sill = sill.or(() -> clip.word(0));
      } else {
        head = head.or(() -> clip.word(0));
      }
    }
    Given<Length> plane =
        properties
            .length("glass-plane")
            .orElseGet(() -> Given.assumed(Length.ZERO, properties.origin(), NOT_STATED));
    Map<String, Given<String>> gaskets = new LinkedHashMap<>();
    for (Phrase gasket : properties.phrases("gasket")) {
      gasket
          .word(0)
          .ifPresent(
              part -> gaskets.putIfAbsent(gasket.word(1).map(Given::value).orElse(""), part));
    }
    return new Part.WallSystem(
        name, properties.origin(), profiles, parts, sill, head, plane, gaskets);
  }

  static Part.Profile profile(String name, Properties properties) {
    String where = "profile " + name;
    Given<Length> face = properties.needed("face", where);
    Given<String> metal = properties.wordOr("metal");
    Optional<Given<Quantity>> area = properties.quantity("area");
    Optional<Given<Outline>> outline = outline(properties);
    return new Part.Profile(
        name,
        properties.origin(),
        role(properties),
        face,
        properties
            .length("sightline")
            .orElseGet(() -> Given.assumed(face.value(), face.origin(), "the face")),
        properties.needed("depth", where),
        area,
        properties.quantity("Ix"),
        properties.quantity("Iy"),
        modulus(properties, "outside"),
        modulus(properties, "inside"),
        properties.quantity("Zx").or(() -> plasticModulus(outline)),
        properties.quantity("Sy"),
        properties.quantity("J"),
        properties.quantity("mass").or(() -> massOf(area, metal)),
        metal,
        properties.word("alloy"),
        properties.stock(),
        properties.side("bite", "left", "below").orElseGet(() -> properties.lengthOr("bite")),
        properties.side("bite", "right", "above").orElseGet(() -> properties.lengthOr("bite")),
        properties.lengthOr("edge-clearance"),
        properties
            .side("edge-clearance", "left", "below")
            .orElseGet(() -> properties.lengthOr("edge-clearance")),
        properties
            .side("edge-clearance", "right", "above")
            .orElseGet(() -> properties.lengthOr("edge-clearance")),
        properties.lengthOr("end-allowance"),
        properties.side("leg", "left"),
        properties.side("leg", "right"),
        properties.word("sleeve"),
        outline,
        properties.quantity("U"),
        FixingParts.holes(properties),
        notch(properties));
  }

  private static Optional<Part.Notch> notch(Properties properties) {
    for (Phrase phrase : properties.phrases("notch")) {
      Optional<Given<Length>> depth = phrase.length(0);
      Optional<Given<Length>> height = phrase.length(1);
      if (depth.isPresent() && height.isPresent()) {
        return Optional.of(
            new Part.Notch(depth.get().value(), height.get().value(), phrase.origin()));
      }
    }
    return Optional.empty();
  }

  private static Given<Role> role(Properties properties) {
    Given<String> word = properties.wordOr("role");
    Role role = Role.valueOf(word.value().toUpperCase(Locale.ROOT));
    return new Given<>(role, word.origin(), word.assumed(), word.source());
  }

  private static Optional<Given<Quantity>> modulus(Properties properties, String side) {
    Optional<Given<Quantity>> both = Optional.empty();
    for (Phrase phrase : properties.phrases("Sx")) {
      Optional<Given<String>> of = phrase.word(1);
      if (of.isEmpty()) {
        both = phrase.quantity(0);
      } else if (of.get().value().equals(side)) {
        return phrase.quantity(0);
      }
    }
    return both;
  }

  private static Optional<Given<Quantity>> massOf(
      Optional<Given<Quantity>> area, Given<String> metal) {
    Rational density =
        switch (metal.value()) {
          case "aluminium", "aluminum" -> ALUMINIUM_DENSITY;
          case "steel" -> STEEL_DENSITY;
          default -> null;
        };
    if (area.isEmpty() || density == null) {
      return Optional.empty();
    }
    Quantity mass =
        new Quantity(area.get().value().si().times(density), Kind.MASS_PER_LENGTH.dimension());
    String source = "area times the density of " + metal.value() + ", EN 1999-1-1 and EN 1993-1-1";
    return Optional.of(Given.assumed(mass, area.get().origin(), source));
  }

  private static Optional<Given<Quantity>> plasticModulus(Optional<Given<Outline>> outline) {
    return outline.flatMap(
        given -> {
          double z = PlasticModulus.of(given.value());
          return z > 0
              ? Optional.of(
                  Given.assumed(
                      Quantity.ofSi(z, Kind.SECTION_MODULUS), given.origin(), "from the outline"))
              : Optional.empty();
        });
  }

  private static Optional<Given<Outline>> outline(Properties properties) {
    List<Outline.Rectangle> rectangles = new ArrayList<>();
    for (Phrase phrase : properties.phrases("outline")) {
      List<Length> lengths = new ArrayList<>();
      for (int i = 0; i < phrase.size(); i++) {
        phrase.length(i).map(Given::value).ifPresent(lengths::add);
      }
      if (lengths.size() < phrase.size()) {
        return Optional.empty();
      }
      boolean hollow = phrase.form() == 0;
      Length width = lengths.get(0);
      Length depth = lengths.get(1);
      int last = hollow ? 3 : 2;
      Length z = lengths.size() > last ? lengths.get(last) : Length.ZERO;
      Length left = width.half().negated();
      rectangles.add(new Outline.Rectangle(left, z, width, depth, false));
      if (hollow) {
        Length wall = lengths.get(2);
        Length both = wall.times(2);
        rectangles.add(
            new Outline.Rectangle(
                left.plus(wall), z.plus(wall), width.minus(both), depth.minus(both), true));
      }
    }
    return rectangles.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Given.stated(new Outline(rectangles), properties.phrases("outline").get(0).origin()));
  }

  static Part.Reinforcement reinforcement(String name, Properties properties) {
    Given<String> metal = properties.wordOr("metal");
    return new Part.Reinforcement(
        name,
        properties.origin(),
        metal,
        properties.quantity("Ix"),
        properties.quantity("Sx"),
        properties.quantity("yield").or(() -> usualYield(properties, metal)),
        properties.quantity("mass"),
        properties.stock());
  }

  /** The default is that of plain steel; of any other metal nothing is assumed. */
  private static Optional<Given<Quantity>> usualYield(Properties properties, Given<String> metal) {
    if (!metal.value().equals("steel")) {
      return Optional.empty();
    }
    PartSchema.Default taken =
        PartSchema.of(PartKind.REINFORCEMENT).find("yield").orElseThrow().byDefault().orElseThrow();
    return QuantityReader.read(taken.text())
        .value()
        .map(yield -> Given.assumed(yield, properties.origin(), taken.source()));
  }

  static Part.Sleeve sleeve(String name, Properties properties) {
    Given<Length> length = properties.needed("length", "sleeve " + name);
    Given<Length> engagement =
        properties
            .length("engagement")
            .orElseGet(
                () ->
                    Given.assumed(
                        length.value().half(), properties.origin(), "half the sleeve's length"));
    return new Part.Sleeve(
        name,
        properties.origin(),
        length,
        engagement,
        properties.wordOr("fixed"),
        properties.wordOr("metal"),
        FixingParts.holes(properties));
  }

  static Part.ShearBlock shearBlock(String name, Properties properties) {
    return new Part.ShearBlock(
        name,
        properties.origin(),
        properties.wordOr("metal"),
        properties.needed("length", "shear-block " + name),
        FixingParts.holes(properties),
        properties.length("edge-distance"),
        properties.wordOr("entry"));
  }
}
