package mullwright.drawing.detail;

import java.util.List;
import java.util.Optional;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * What meets at a member: a place where a section is drawn.
 *
 * @param upright true for a horizontal, which is cut upright; a vertical is cut level
 * @param title {@code Sill}
 * @param profile of the member
 * @param plane from the outer face of the glass to the back of the profile
 * @param less what is below, or on the left; {@code more} above, or on the right
 * @param plate width of the pressure plate, {@code cap} of the face cap; empty if the system has
 *     none, or the catalog
 * @param screw that fastens the plate
 * @param perimeter width of the joint round the frame, at a side without anything
 * @param places where it is so, as the shop names the pieces
 */
record Joint(
    boolean upright,
    String title,
    Part.Profile profile,
    Length plane,
    Side less,
    Side more,
    Optional<Length> plate,
    Optional<Length> cap,
    Optional<Part.Fastener> screw,
    Length perimeter,
    boolean perimeterStated,
    List<String> places) {
  Joint {
    places = List.copyOf(places);
  }

  /** The same joint with all glass that may be beside it, and all places where it is so. */
  Joint with(String lessGlass, String moreGlass, List<String> others) {
    return new Joint(
        upright,
        title,
        profile,
        plane,
        less.named(lessGlass),
        more.named(moreGlass),
        plate,
        cap,
        screw,
        perimeter,
        perimeterStated,
        others);
  }

  /**
   * One side of a member.
   *
   * @param kind what is there
   * @param name of the glass or the opening
   * @param layers of the glass, from outdoors
   * @param sight from the line to the sightline
   * @param bite of the glass
   * @param clearance from its edge to the metal
   * @param block length of the setting blocks the glass stands on there, if it does
   */
  record Side(
      Kind kind,
      String name,
      List<Part.Layer> layers,
      Length sight,
      Length bite,
      Length clearance,
      Optional<Length> block) {
    Side {
      layers = List.copyOf(layers);
    }

    /** What may be beside a member. */
    enum Kind {
      GLASS,
      OPENING,
      NOTHING
    }

    Side named(String other) {
      return new Side(kind, other, layers, sight, bite, clearance, block);
    }

    boolean glass() {
      return kind == Kind.GLASS && !layers.isEmpty();
    }

    /** How thick the glass is. */
    Length thickness() {
      return layers.stream().map(Part.Layer::thickness).reduce(Length.ZERO, Length::plus);
    }

    /** From the line to the edge of the glass. */
    Length edge() {
      return sight.minus(bite);
    }

    /** From the line to the metal the glass keeps clear of. */
    Length metal() {
      return edge().minus(clearance);
    }
  }
}
