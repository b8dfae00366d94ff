package mullwright.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.layout.WallLayout;
import mullwright.model.Catalog;
import mullwright.model.Given;
import mullwright.model.Members;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.model.Wall;
import mullwright.model.WindSite;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.LengthPrinter;
import mullwright.quantity.Quantity;
import mullwright.quantity.QuantityPrinter;
import mullwright.quantity.UnitSystem;

/** Gathers what a wall and the parts it is made of leave open, and what is taken instead. */
final class Defaults {
  private final UnitSystem units;
  private final Set<Taken> taken = new LinkedHashSet<>();

  /**
   * A default.
   *
   * @param of the part or statement that leaves it open
   * @param name what is left open
   * @param source on whose word it is taken
   */
  record Taken(String of, String name, String value, String source) {}

  private Defaults(UnitSystem units) {
    this.units = units;
  }

  /** The defaults of a wall: of its own, then of its parts in the order the layout meets them. */
  static List<Taken> of(WallLayout layout, UnitSystem units) {
    Defaults defaults = new Defaults(units);
    defaults.wall(layout.wall());
    parts(layout).forEach(defaults::part);
    return List.copyOf(defaults.taken);
  }

  private void take(String of, String name, Given<?> given) {
    if (given.assumed()) {
      taken.add(new Taken(of, name, value(given.value()), given.source()));
    }
  }

  private void take(String of, String name, Optional<? extends Given<?>> given) {
    given.ifPresent(stands -> take(of, name, stands));
  }

  private String value(Object value) {
    if (value instanceof Length length) {
      return LengthPrinter.both(length, units);
    }
    if (value instanceof Quantity quantity) {
      return Kind.of(quantity.dimension())
          .map(kind -> QuantityPrinter.both(quantity, kind, units))
          .orElseGet(() -> quantity.si().toString());
    }
    if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    }
    if (value instanceof mullwright.model.Role role) {
      return role.spelling();
    }
    if (value instanceof Part.BoltLine line) {
      return LengthPrinter.both(line.distance(), units)
          + (line.below() ? " below " : " above ")
          + (line.fromTop() ? "top" : "underside")
          + " of slab";
    }
    return String.valueOf(value);
  }

  private void wall(Wall wall) {
    take("criteria", "wind basis", wall.criteria().windBasis());
    take("criteria", "metal temperature", wall.criteria().temperature());
    wall.criteria().slabDeflection().entrySet().stream()
        .sorted(java.util.Map.Entry.comparingByKey())
        .forEach(
            floor ->
                take("criteria", ("slab deflection " + floor.getKey()).strip(), floor.getValue()));
    take("criteria", "story drift", wall.criteria().storyDrift());
    take("criteria", "story drift ratio", wall.criteria().storyDriftRatio());
    take("criteria", "exposure", wall.criteria().exposure());
    take("criteria", "deflection limit", wall.criteria().deflectionLimit());
    take("criteria", "importance factor", wall.criteria().glass().importance());
    take("criteria", "least bite of the glass", wall.criteria().glass().leastBite());
    wall.criteria().site().ifPresent(this::site);
    take("fabrication", "kerf", wall.fabrication().kerf());
    take("fabrication", "end trim", wall.fabrication().endTrim());
    take("fabrication", "least drop", wall.fabrication().leastDrop());
    wall.grid()
        .floors()
        .forEach(
            floor -> {
              take("floor " + floor.name(), "slab", floor.slab());
              take("floor " + floor.name(), "slab edge", floor.edge());
            });
    wall.members().verticals().forEach(it -> take("verticals", "profile", it.profile()));
    wall.members().horizontals().forEach(it -> take("horizontals", "profile", it.profile()));
    for (Members.Splice splice : wall.members().splices()) {
      take("splices", "gap", splice.gap());
      take("splices", "sleeve", splice.sleeve());
    }
    wall.anchors()
        .forEach(
            anchor -> {
              String of = anchor.kind().spelling();
              take(of, "part", anchor.part());
              take(of, "isolated by", anchor.isolation());
              take(of, "bedded on", anchor.bedding());
              take(of, "spread by", anchor.spread());
            });
  }

  private void site(WindSite site) {
    take("wind", "ground", site.ground());
    take("wind", "Kzt", site.topographic());
    take("wind", "Kd", site.directionality());
    take("wind", "edition of ASCE 7", site.edition());
    take("wind", "corners of the building", site.corners());
  }

  private static List<Part> parts(WallLayout layout) {
    Set<Part> parts = new LinkedHashSet<>();
    Catalog catalog = layout.catalog();
    layout.wall().system().ifPresent(parts::add);
    layout.verticals().forEach(piece -> parts.add(piece.profile()));
    layout.horizontals().forEach(piece -> parts.add(piece.profile()));
    layout.cells().forEach(cell -> cell.glass().ifPresent(parts::add));
    List<Given<String>> named = new ArrayList<>();
    layout.wall().anchors().forEach(anchor -> anchor.part().ifPresent(named::add));
    layout.wall().members().reinforcements().forEach(bar -> named.add(bar.part()));
    layout.wall().members().splices().forEach(splice -> splice.sleeve().ifPresent(named::add));
    for (Given<String> name : named) {
      for (PartKind kind : PartKind.values()) {
        catalog.find(kind, name.value()).ifPresent(parts::add);
      }
    }
    layout
        .wall()
        .system()
        .ifPresent(
            system ->
                system.parts().entrySet().stream()
                    .sorted(java.util.Map.Entry.comparingByKey())
                    .forEach(
                        part ->
                            catalog
                                .find(part.getKey(), part.getValue().value())
                                .ifPresent(parts::add)));
    return List.copyOf(parts);
  }

  private void part(Part part) {
    String of = part.kind().spelling() + " " + part.name();
    if (part instanceof Part.WallSystem system) {
      take(of, "glass plane", system.glassPlane());
    } else if (part instanceof Part.Profile profile) {
      profile(of, profile);
    } else if (part instanceof Part.Sleeve sleeve) {
      take(of, "length", sleeve.length());
      take(of, "engagement", sleeve.engagement());
      take(of, "fixed end", sleeve.fixedEnd());
      take(of, "metal", sleeve.metal());
    } else if (part instanceof Part.Reinforcement bar) {
      take(of, "metal", bar.metal());
    } else if (part instanceof Part.ShearBlock block) {
      take(of, "metal", block.metal());
      take(of, "length", block.length());
      take(of, "edge distance", block.edgeDistance());
    } else if (part instanceof Part.Clip clip) {
      take(of, "metal", clip.metal());
      take(of, "projection", clip.projection());
    } else if (part instanceof Part.Anchor anchor) {
      take(of, "metal", anchor.metal());
      take(of, "bolt line", anchor.boltLine());
      take(of, "slot", anchor.slot());
      take(of, "height", anchor.height());
    } else if (part instanceof Part.Glass glass) {
      take(of, "opacified", glass.opacified());
      take(of, "safety", glass.safety());
      take(of, "bite", glass.bite());
    } else if (part instanceof Part.PressurePlate plate) {
      take(of, "width", plate.width());
      take(of, "end gap", plate.endGap());
      take(of, "fastener spacing", plate.spacing());
      take(of, "first fastener from the end", plate.endDistance());
      take(of, "fastener", plate.fastener());
    } else if (part instanceof Part.FaceCap cap) {
      take(of, "face", cap.face());
      take(of, "end gap", cap.endGap());
    } else if (part instanceof Part.SpreadPlate plate) {
      take(of, "metal", plate.metal());
      take(of, "thickness", plate.thickness());
    } else if (part instanceof Part.Fastener fastener) {
      take(of, "metal", fastener.metal());
    }
  }

  private void profile(String of, Part.Profile profile) {
    take(of, "role", profile.role());
    take(of, "face", profile.face());
    take(of, "sightline", profile.sightline());
    take(of, "depth", profile.depth());
    take(of, "metal", profile.metal());
    take(of, "alloy", profile.alloy());
    take(of, "bite left (below)", profile.biteLeft());
    take(of, "bite right (above)", profile.biteRight());
    take(of, "edge clearance", profile.edgeClearance());
    take(of, "end allowance", profile.endAllowance());
    take(of, "sleeve", profile.sleeve());
  }
}
