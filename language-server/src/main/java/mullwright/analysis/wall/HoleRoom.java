package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.analysis.fastener.HoleLayout;
import mullwright.derivation.Derivation;
import mullwright.layout.DrilledHole;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.SystemPart;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.quantity.Length;

/**
 * Which holes of a piece are nearer to an edge, or to each other, than the fastener needs.
 *
 * <p>Edge distance ≥ 1.5 diameters, spacing ≥ 2.5 diameters: {@link HoleLayout}. A shear block may
 * state more at a horizontal's end. Where the catalog does not state a fastener's diameter, its
 * hole's is taken, which is on the safe side.
 */
public final class HoleRoom {
  /**
   * Too little room.
   *
   * @param to what the hole is too near to: {@code the lower end}, or another hole
   * @param other the other hole, if it is one
   * @param distance what there is, {@code least} what is needed
   * @param diameter of the fastener
   * @param stated the block's own edge distance, where that is what decides
   */
  public record Shortfall(
      DrilledHole hole,
      String to,
      Optional<DrilledHole> other,
      Length distance,
      Length least,
      Given<Length> diameter,
      Optional<Given<Length>> stated) {
    /** The distance, with how it came about. */
    public Derivation measured() {
      String formula =
          other.isPresent() ? "from centre to centre" : "from the hole's centre to " + to;
      return Derivation.computed("distance", distance, formula, "conventions of measure");
    }

    /** The least distance, with how it came about. */
    public Derivation limit() {
      if (stated.isPresent()) {
        return Inputs.length("edge distance of the block", stated.get());
      }
      var rule = other.isPresent() ? HoleLayout.LEAST_SPACING : HoleLayout.LEAST_EDGE;
      return Derivation.computed(
          "least distance",
          least,
          rule.words(),
          rule.source(),
          Inputs.length("fastener diameter", diameter));
    }
  }

  private record Needs(Given<Length> diameter, Length edge, Length spacing) {}

  private final WallLayout layout;
  private final Optional<Part.ShearBlock> block;

  /** By fastener; empty of one whose diameter nobody states. */
  private final Map<String, Optional<Needs>> byFastener = new HashMap<>();

  private final Map<Length, Needs> byDiameter = new HashMap<>();

  private HoleRoom(WallLayout layout) {
    this.layout = layout;
    this.block = SystemPart.shearBlock(layout);
  }

  /** Of one layout. */
  public static HoleRoom of(WallLayout layout) {
    return new HoleRoom(layout);
  }

  /** What is too near in a vertical. */
  public List<Shortfall> vertical(VerticalPiece piece, List<DrilledHole> holes) {
    return find(
        piece.profile(), holes, "the lower end", "the upper end", piece.length(), Optional.empty());
  }

  /** What is too near in a horizontal. */
  public List<Shortfall> horizontal(HorizontalPiece piece, List<DrilledHole> holes) {
    return find(
        piece.profile(),
        holes,
        "the left end",
        "the right end",
        piece.length(),
        block.flatMap(Part.ShearBlock::edgeDistance));
  }

  // in ticks: a tower's tens of thousands of holes are gone through at every edit
  private List<Shortfall> find(
      Part.Profile profile,
      List<DrilledHole> holes,
      String firstEnd,
      String lastEnd,
      Length length,
      Optional<Given<Length>> stated) {
    List<Shortfall> found = new ArrayList<>(0);
    long back = SystemPart.backOf(layout, profile).ticks();
    long front = back - profile.depth().value().ticks();
    long widest = 0;
    Needs[] all = new Needs[holes.size()];
    for (int i = 0; i < all.length; i++) {
      if (holes.get(i).placed()) {
        all[i] = needs(holes.get(i));
        widest = Math.max(widest, all[i].spacing().ticks());
      }
    }
    for (int i = 0; i < all.length; i++) {
      DrilledHole hole = holes.get(i);
      Needs needed = all[i];
      if (needed == null) {
        continue;
      }
      long along = hole.along().ticks();
      long depth = hole.back().orElseThrow().ticks();
      end(hole, firstEnd, along, needed, stated, found);
      end(hole, lastEnd, length.ticks() - along, needed, stated, found);
      edge(hole, "the glass side", depth - front, needed, found);
      edge(hole, "the room side", back - depth, needed, found);
      for (int j = i + 1; j < holes.size(); j++) {
        DrilledHole other = holes.get(j);
        // holes stand in their order along the piece
        if (other.along().ticks() - along > widest) {
          break;
        }
        if (all[j] != null && hole.side().meets(other.side())) {
          spacing(hole, other, needed, all[j], found);
        }
      }
    }
    return found;
  }

  private static void end(
      DrilledHole hole,
      String edge,
      long distance,
      Needs needed,
      Optional<Given<Length>> stated,
      List<Shortfall> found) {
    if (stated.isPresent() && stated.get().value().isLongerThan(needed.edge())) {
      Length least = stated.get().value();
      if (distance < least.ticks()) {
        found.add(
            new Shortfall(
                hole,
                edge,
                Optional.empty(),
                new Length(distance),
                least,
                needed.diameter(),
                stated));
      }
    } else {
      edge(hole, edge, distance, needed, found);
    }
  }

  private static void edge(
      DrilledHole hole, String name, long distance, Needs needed, List<Shortfall> found) {
    if (distance < needed.edge().ticks()) {
      found.add(
          new Shortfall(
              hole,
              name,
              Optional.empty(),
              new Length(distance),
              needed.edge(),
              needed.diameter(),
              Optional.empty()));
    }
  }

  // holes that run into each other are another matter: see HoleMeeting
  private static void spacing(
      DrilledHole hole, DrilledHole other, Needs needed, Needs others, List<Shortfall> found) {
    Length least = Length.max(needed.spacing(), others.spacing());
    if (!other.along().minus(hole.along()).isShorterThan(least)) {
      return;
    }
    Length apart = HoleMeeting.apart(hole, other);
    if (apart.isShorterThan(least) && !HoleMeeting.overlap(hole, other, apart)) {
      found.add(
          new Shortfall(
              hole,
              "another hole",
              Optional.of(other),
              apart,
              least,
              needed.spacing().isShorterThan(least) ? others.diameter() : needed.diameter(),
              Optional.empty()));
    }
  }

  private Needs needs(DrilledHole hole) {
    if (hole.fastener().isPresent()) {
      String fastener = hole.fastener().get();
      Optional<Needs> known = byFastener.get(fastener);
      if (known == null) {
        known = diameter(fastener).map(this::remembered);
        byFastener.put(fastener, known);
      }
      if (known.isPresent()) {
        return known.get();
      }
    }
    return remembered(
        Given.assumed(
            hole.diameter().orElseThrow(),
            hole.origin(),
            "diameter of the hole, as no fastener's is stated"));
  }

  private Needs remembered(Given<Length> diameter) {
    return byDiameter.computeIfAbsent(diameter.value(), any -> needs(diameter));
  }

  private static Needs needs(Given<Length> diameter) {
    return HoleLayout.solve(diameter.value().toMetres())
        .solved()
        .map(
            limits ->
                new Needs(
                    diameter,
                    Length.nearest(limits.leastEdge()),
                    Length.nearest(limits.leastSpacing())))
        .orElse(new Needs(diameter, Length.ZERO, Length.ZERO));
  }

  private Optional<Given<Length>> diameter(String fastener) {
    return layout
        .catalog()
        .find(PartKind.FASTENER, fastener)
        .filter(Part.Fastener.class::isInstance)
        .flatMap(part -> ((Part.Fastener) part).diameter());
  }
}
