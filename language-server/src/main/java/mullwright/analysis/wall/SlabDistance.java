package mullwright.analysis.wall;

import java.util.Optional;
import mullwright.derivation.Derivation;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.WallLayout;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * Distance from the back of a vertical to the slab edge an anchor goes to.
 *
 * <p>slab edge behind the glass face − depth of the system behind the glass face.
 *
 * @param edge slab edge behind the glass face, as the floor states it
 * @param glassPlane back of the profiles behind the glass face, by the system
 * @param reach what the anchor's part spans, if the catalog says so
 */
public record SlabDistance(Given<Length> edge, Given<Length> glassPlane, Optional<Reach> reach) {

  /** Nearest and furthest slab edge a part spans. */
  public record Reach(Given<Length> leastGiven, Given<Length> mostGiven) {
    /** Nearest. */
    public Length least() {
      return leastGiven.value();
    }

    /** Furthest. */
    public Length most() {
      return mostGiven.value();
    }
  }

  /** The distance at an anchor; empty if its floor does not state the slab edge. */
  public static Optional<SlabDistance> of(WallLayout layout, PlacedAnchor anchor) {
    Optional<Given<Length>> edge =
        anchor.use().floor().flatMap(floor -> layout.wall().grid().floors().get(floor).edge());
    Optional<Part.WallSystem> system = layout.wall().system();
    if (edge.isEmpty() || system.isEmpty() || anchor.vertical() < 0) {
      return Optional.empty();
    }
    return Optional.of(
        new SlabDistance(
            edge.get(), system.get().glassPlane(), anchor.part().flatMap(SlabDistance::reach)));
  }

  /** What a part spans, if the catalog says so. */
  public static Optional<Reach> reach(Part.Anchor part) {
    return part.reachLeast().flatMap(least -> part.reachMost().map(most -> new Reach(least, most)));
  }

  /** The distance. */
  public Length value() {
    return edge.value().minus(glassPlane.value());
  }

  /** True if a part of that reach spans it. */
  public boolean within(Reach reach) {
    return !value().isShorterThan(reach.least()) && !value().isLongerThan(reach.most());
  }

  /** The distance with how it came about. */
  public Derivation explain() {
    return Derivation.computed(
        "distance from the back of the vertical",
        value(),
        "slab edge behind the glass − glass plane",
        "geometry",
        Inputs.length("slab edge behind the glass", edge),
        Inputs.length("glass plane", glassPlane));
  }

  /** The end of the reach that is passed. */
  public Derivation limit(boolean near) {
    Reach spanned = reach.orElseThrow();
    return near
        ? Inputs.length("nearest slab edge", spanned.leastGiven())
        : Inputs.length("furthest slab edge", spanned.mostGiven());
  }
}
