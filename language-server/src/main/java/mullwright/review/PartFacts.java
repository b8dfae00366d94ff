package mullwright.review;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import mullwright.model.Catalog;
import mullwright.model.Given;
import mullwright.model.Outline;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.quantity.Kind;

/** Takes down what the catalog says of the parts a wall is made of, and of no other. */
final class PartFacts {
  private final Catalog catalog;
  private final SheetWriter to;

  PartFacts(Catalog catalog, SheetWriter to) {
    this.catalog = catalog;
    this.to = to;
  }

  /** Follows the names that stand in the sheet, then those that stand in parts. */
  void write(FactSheet wall) {
    Map<String, List<Part>> byName = new TreeMap<>();
    for (PartKind kind : PartKind.values()) {
      for (Part part : catalog.all(kind)) {
        byName.computeIfAbsent(part.name(), name -> new ArrayList<>()).add(part);
      }
    }
    Deque<String> open = new ArrayDeque<>(new TreeSet<>(named(wall)));
    TreeSet<String> seen = new TreeSet<>(open);
    while (!open.isEmpty()) {
      for (Part part : byName.getOrDefault(open.poll(), List.of())) {
        Subject subject = write(part);
        for (Value value : to.said(subject)) {
          names(value).stream().filter(seen::add).forEach(open::add);
        }
      }
    }
  }

  private static TreeSet<String> named(FactSheet sheet) {
    TreeSet<String> found = new TreeSet<>();
    sheet.facts().values().forEach(value -> found.addAll(names(value)));
    return found;
  }

  // a value may be "2 × hex-half"
  private static List<String> names(Value value) {
    if (!(value instanceof Value.Words words)) {
      return List.of();
    }
    List<String> names = new ArrayList<>(List.of(words.text().split("[ ,]+")));
    names.add(words.text());
    return names;
  }

  private Subject write(Part part) {
    Subject subject =
        to.begin(Topic.PART, Name.other(part.kind().spelling()), Name.other(part.name()));
    if (part instanceof Part.WallSystem system) {
      new TreeMap<>(system.profiles())
          .forEach(
              (role, name) ->
                  to.words(subject, role.name().toLowerCase(Locale.ROOT), name.value()));
      new TreeMap<>(system.parts())
          .forEach((kind, name) -> to.words(subject, kind.spelling(), name.value()));
      to.word(subject, "sill-clip", system.sillClip());
      to.word(subject, "head-clip", system.headClip());
      to.size(subject, "glass-plane", system.glassPlane().value());
    } else if (part instanceof Part.Profile profile) {
      profile(subject, profile);
    } else if (part instanceof Part.Glass glass) {
      glass(subject, glass);
    } else if (part instanceof Part.Anchor anchor) {
      anchor(subject, anchor);
    } else {
      fixing(subject, part);
    }
    return subject;
  }

  private void profile(Subject subject, Part.Profile profile) {
    to.words(subject, "role", profile.role().value().name().toLowerCase(Locale.ROOT));
    to.size(subject, "face", profile.face().value());
    to.size(subject, "sightline", profile.sightline().value());
    to.size(subject, "depth", profile.depth().value());
    to.amount(subject, "area", Kind.AREA, profile.area());
    to.amount(subject, "Ix", Kind.SECOND_MOMENT, profile.ix());
    to.amount(subject, "Iy", Kind.SECOND_MOMENT, profile.iy());
    to.amount(subject, "Sx outside", Kind.SECTION_MODULUS, profile.sxOutside());
    to.amount(subject, "Sx inside", Kind.SECTION_MODULUS, profile.sxInside());
    to.amount(subject, "Sy", Kind.SECTION_MODULUS, profile.sy());
    to.amount(subject, "J", Kind.SECOND_MOMENT, profile.j());
    to.amount(subject, "mass", Kind.MASS_PER_LENGTH, profile.massPerLength());
    to.words(subject, "metal", profile.metal().value());
    to.word(subject, "alloy", profile.alloy());
    stock(subject, profile.stock());
    to.size(subject, "bite left", profile.biteLeft().value());
    to.size(subject, "bite right", profile.biteRight().value());
    to.size(subject, "edge-clearance", profile.edgeClearance().value());
    to.size(subject, "end-allowance", profile.endAllowance().value());
    to.length(subject, "leg left", profile.legLeft());
    to.length(subject, "leg right", profile.legRight());
    to.word(subject, "sleeve", profile.sleeve());
    profile
        .outline()
        .map(Given::value)
        .map(Outline::rectangles)
        .ifPresent(rectangles -> to.words(subject, "outline", rectangles.toString()));
  }

  private void stock(Subject subject, List<Part.Stock> bars) {
    int number = 0;
    for (Part.Stock bar : bars) {
      number++;
      String which = "stock " + number;
      to.size(subject, which, bar.length().value());
      bar.cost().ifPresent(cost -> to.words(subject, which + " cost", cost.value().toString()));
    }
  }

  private void glass(Subject subject, Part.Glass glass) {
    int number = 0;
    for (Part.Layer layer : glass.layers()) {
      number++;
      String which = "layer " + number + ", " + layer.what();
      to.size(subject, which, layer.thickness());
      if (!layer.words().isEmpty()) {
        to.words(subject, which + " of", String.join(" ", layer.words()));
      }
    }
    to.words(subject, "opacified", glass.opacified().value() ? "yes" : "no");
    to.words(subject, "safety", glass.safety().value() ? "yes" : "no");
    to.amount(subject, "U", Kind.U_FACTOR, glass.uFactor());
    to.length(subject, "most width", glass.mostWidth());
    to.length(subject, "most height", glass.mostHeight());
    to.length(subject, "least width", glass.leastWidth());
    to.length(subject, "least height", glass.leastHeight());
    to.amount(subject, "largest-area", Kind.AREA, glass.mostArea());
    to.length(subject, "bite", glass.bite());
    to.amount(subject, "shear-modulus", Kind.STRESS, glass.shearModulus());
    to.amount(subject, "edge-psi", Kind.LINEAR_TRANSMITTANCE, glass.edgePsi());
    to.length(subject, "billed", glass.billed());
  }

  private void anchor(Subject subject, Part.Anchor anchor) {
    to.word(subject, "use", anchor.use());
    to.words(subject, "metal", anchor.metal().value());
    Part.BoltLine line = anchor.boltLine().value();
    to.size(subject, "bolt-line", line.distance());
    to.words(
        subject,
        "bolt-line from",
        (line.below() ? "below " : "above ") + (line.fromTop() ? "top" : "underside"));
    to.length(subject, "reach, least", anchor.reachLeast());
    to.length(subject, "reach, most", anchor.reachMost());
    to.length(subject, "slot", anchor.slot());
    to.length(subject, "height", anchor.height());
    holes(subject, anchor.holes());
    new TreeMap<>(anchor.capacities())
        .forEach(
            (direction, force) ->
                to.amount(subject, "capacity " + direction, Kind.FORCE, Optional.of(force)));
  }

  private void holes(Subject subject, List<Part.Hole> holes) {
    int number = 0;
    for (Part.Hole hole : holes) {
      number++;
      to.size(subject, "hole " + number, hole.diameter());
      to.size(subject, "hole " + number + " along", hole.along());
      to.size(subject, "hole " + number + " back", hole.back());
      if (hole.fastener().isPresent()) {
        to.words(subject, "hole " + number + " for", hole.fastener().get());
      }
    }
  }

  private void fixing(Subject subject, Part part) {
    if (part instanceof Part.Reinforcement bar) {
      to.words(subject, "metal", bar.metal().value());
      to.amount(subject, "Ix", Kind.SECOND_MOMENT, bar.ix());
      to.amount(subject, "Sx", Kind.SECTION_MODULUS, bar.sx());
      to.amount(subject, "mass", Kind.MASS_PER_LENGTH, bar.massPerLength());
      stock(subject, bar.stock());
    } else if (part instanceof Part.Sleeve sleeve) {
      to.size(subject, "length", sleeve.length().value());
      to.size(subject, "engagement", sleeve.engagement().value());
      to.words(subject, "fixed", sleeve.fixedEnd().value());
      to.words(subject, "metal", sleeve.metal().value());
    } else if (part instanceof Part.ShearBlock block) {
      to.words(subject, "metal", block.metal().value());
      to.size(subject, "length", block.length().value());
      to.length(subject, "edge-distance", block.edgeDistance());
      holes(subject, block.holes());
    } else if (part instanceof Part.Clip clip) {
      to.words(subject, "metal", clip.metal().value());
      to.size(subject, "projection", clip.projection().value());
      holes(subject, clip.holes());
    } else {
      cover(subject, part);
    }
  }

  private void cover(Subject subject, Part part) {
    if (part instanceof Part.PressurePlate plate) {
      to.size(subject, "width", plate.width().value());
      to.size(subject, "end-gap", plate.endGap().value());
      to.size(subject, "spacing", plate.spacing().value());
      to.size(subject, "end-distance", plate.endDistance().value());
      stock(subject, plate.stock());
      to.word(subject, "fastener", plate.fastener());
    } else if (part instanceof Part.FaceCap cap) {
      to.size(subject, "face", cap.face().value());
      to.size(subject, "end-gap", cap.endGap().value());
      stock(subject, cap.stock());
    } else if (part instanceof Part.SpreadPlate plate) {
      to.words(subject, "metal", plate.metal().value());
      to.length(subject, "thickness", plate.thickness());
    } else if (part instanceof Part.Fastener fastener) {
      to.words(subject, "metal", fastener.metal().value());
      to.length(subject, "diameter", fastener.diameter());
      to.length(subject, "length", fastener.length());
    } else if (part instanceof Part.Plain plain) {
      to.word(subject, "metal", plain.metal());
      new TreeMap<>(plain.facts()).forEach((word, fact) -> to.words(subject, word, fact.value()));
    }
  }
}
