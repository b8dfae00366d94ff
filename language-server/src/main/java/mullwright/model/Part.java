package mullwright.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;

/**
 * A part of the catalog. What a catalog does not state is empty, or a default that says so.
 *
 * <p>Names of other parts are kept as names with their place ({@link Given}); {@link Catalog} finds
 * the part.
 */
public sealed interface Part {
  /** Its name. */
  String name();

  /** Where its name stands. */
  Origin origin();

  /** What it is. */
  PartKind kind();

  /**
   * A length a part is bought in.
   *
   * @param cost of one bar, in any unit of money as long as it is the same for all; empty if the
   *     catalog gives none
   */
  record Stock(Given<Length> length, Optional<Given<Integer>> cost) {
    /** Highest cost of a bar. */
    public static final int MOST_COST = 1_000_000;

    /** A stock length of which only the length is known. */
    public static Stock of(Given<Length> length) {
      return new Stock(length, Optional.empty());
    }
  }

  /**
   * The system: which part plays each role.
   *
   * @param gaskets by side, {@code outdoor} and {@code indoor}, as far as they are told apart
   */
  record WallSystem(
      String name,
      Origin origin,
      Map<Role, Given<String>> profiles,
      Map<PartKind, Given<String>> parts,
      Optional<Given<String>> sillClip,
      Optional<Given<String>> headClip,
      Given<Length> glassPlane,
      Map<String, Given<String>> gaskets)
      implements Part {
    public WallSystem {
      profiles = Map.copyOf(profiles);
      parts = Map.copyOf(parts);
      gaskets = Map.copyOf(gaskets);
    }

    /** A system that tells no gaskets apart by side. */
    public WallSystem(
        String name,
        Origin origin,
        Map<Role, Given<String>> profiles,
        Map<PartKind, Given<String>> parts,
        Optional<Given<String>> sillClip,
        Optional<Given<String>> headClip,
        Given<Length> glassPlane) {
      this(name, origin, profiles, parts, sillClip, headClip, glassPlane, Map.of());
    }

    @Override
    public PartKind kind() {
      return PartKind.SYSTEM;
    }
  }

  /**
   * An extruded profile.
   *
   * @param face width of metal seen in elevation
   * @param sightline width the glass leaves to be seen; the face unless stated
   * @param depth out of the wall
   * @param ix second moment for wind (bending out of the plane)
   * @param iy second moment in the plane of the wall (dead load of horizontals)
   * @param sxOutside section modulus at the outer fibre, {@code sxInside} at the inner
   * @param zx plastic section modulus for wind; from the outline where it is not stated
   * @param massPerLength with unit mass per length
   * @param stock lengths it is bought in, as the text lists them
   * @param biteLeft glass bite on the left (of a horizontal: below), {@code biteRight} on the right
   *     (above); a jamb has one side and states it once
   * @param edgeClearance from the glass edge to metal, at the side it is stated for first
   * @param clearanceLeft the same on the left (of a horizontal: below), {@code clearanceRight} on
   *     the right (above)
   * @param endAllowance clearance of a horizontal at each end
   * @param legLeft of a corner: distance from the line to the sightline on the left-hand face,
   *     {@code legRight} on the right-hand one
   * @param uFactor thermal transmittance of the framed profile, fasteners included
   * @param holes the shop's own template for the ends of a horizontal: along from the end; empty
   *     where it drills by the shear block's pattern
   * @param notch cut from each end of a horizontal, if it is notched
   */
  record Profile(
      String name,
      Origin origin,
      Given<Role> role,
      Given<Length> face,
      Given<Length> sightline,
      Given<Length> depth,
      Optional<Given<Quantity>> area,
      Optional<Given<Quantity>> ix,
      Optional<Given<Quantity>> iy,
      Optional<Given<Quantity>> sxOutside,
      Optional<Given<Quantity>> sxInside,
      Optional<Given<Quantity>> zx,
      Optional<Given<Quantity>> sy,
      Optional<Given<Quantity>> j,
      Optional<Given<Quantity>> massPerLength,
      Given<String> metal,
      Optional<Given<String>> alloy,
      List<Stock> stock,
      Given<Length> biteLeft,
      Given<Length> biteRight,
      Given<Length> edgeClearance,
      Given<Length> clearanceLeft,
      Given<Length> clearanceRight,
      Given<Length> endAllowance,
      Optional<Given<Length>> legLeft,
      Optional<Given<Length>> legRight,
      Optional<Given<String>> sleeve,
      Optional<Given<Outline>> outline,
      Optional<Given<Quantity>> uFactor,
      List<Hole> holes,
      Optional<Notch> notch)
      implements Part {
    public Profile {
      stock = List.copyOf(stock);
      holes = List.copyOf(holes);
    }

    /** By name, which a catalog has once: equal profiles have equal names. */
    @Override
    public int hashCode() {
      return name.hashCode();
    }

    @Override
    public PartKind kind() {
      return PartKind.PROFILE;
    }
  }

  /** What is cut from a horizontal's end: so far along it, so far back from its glass side. */
  record Notch(Length along, Length back, Origin origin) {}

  /**
   * Steel bar or tube inside a vertical.
   *
   * @param yield its yield strength; for steel a default where none is stated
   */
  record Reinforcement(
      String name,
      Origin origin,
      Given<String> metal,
      Optional<Given<Quantity>> ix,
      Optional<Given<Quantity>> sx,
      Optional<Given<Quantity>> yield,
      Optional<Given<Quantity>> massPerLength,
      List<Stock> stock)
      implements Part {
    @Override
    public PartKind kind() {
      return PartKind.REINFORCEMENT;
    }
  }

  /**
   * A splice sleeve.
   *
   * @param fixedEnd the end that is screwed: {@code lower} or {@code upper}
   * @param holes in the length it is screwed to, along from that length's end at the joint
   */
  record Sleeve(
      String name,
      Origin origin,
      Given<Length> length,
      Given<Length> engagement,
      Given<String> fixedEnd,
      Given<String> metal,
      List<Hole> holes)
      implements Part {
    public Sleeve {
      holes = List.copyOf(holes);
    }

    @Override
    public PartKind kind() {
      return PartKind.SLEEVE;
    }
  }

  /**
   * One hole of a pattern: diameter, distance along from the part's datum, depth back from z = 0.
   */
  record Hole(
      Length diameter, Length along, Length back, Optional<String> fastener, Origin origin) {}

  /**
   * A shear block: what holds a horizontal's end to the vertical.
   *
   * @param entry how a horizontal goes onto it: from the {@code front}, or slid on from its {@code
   *     end}, which needs the other vertical out of the way
   */
  record ShearBlock(
      String name,
      Origin origin,
      Given<String> metal,
      Given<Length> length,
      List<Hole> holes,
      Optional<Given<Length>> edgeDistance,
      Given<String> entry)
      implements Part {
    /** A block a horizontal is put onto from the front. */
    public ShearBlock(
        String name,
        Origin origin,
        Given<String> metal,
        Given<Length> length,
        List<Hole> holes,
        Optional<Given<Length>> edgeDistance) {
      this(
          name,
          origin,
          metal,
          length,
          holes,
          edgeDistance,
          Given.assumed("front", origin, "common practice"));
    }

    @Override
    public PartKind kind() {
      return PartKind.SHEAR_BLOCK;
    }
  }

  /** A clip at sill or head; its form (one leg, two legs) follows from the bays beside it. */
  record Clip(
      String name, Origin origin, Given<String> metal, Given<Length> projection, List<Hole> holes)
      implements Part {
    @Override
    public PartKind kind() {
      return PartKind.CLIP;
    }
  }

  /** Where an anchor's bolt line sits: so far above or below the top or underside of the slab. */
  record BoltLine(Length distance, boolean below, boolean fromTop) {}

  /**
   * An anchor to the slab.
   *
   * @param use {@code dead-load}, {@code wind-load}, or empty if it serves for both
   * @param reachLeast nearest slab edge (from the glass face, or the member's back as the system
   *     says) it spans; {@code reachMost} the furthest
   * @param capacities by direction: {@code down}, {@code in}, {@code out}; if the engineer gave
   *     them
   */
  record Anchor(
      String name,
      Origin origin,
      Optional<Given<String>> use,
      Given<String> metal,
      Given<BoltLine> boltLine,
      Optional<Given<Length>> reachLeast,
      Optional<Given<Length>> reachMost,
      Optional<Given<Length>> slot,
      List<Hole> holes,
      Optional<Given<Length>> height,
      Map<String, Given<Quantity>> capacities)
      implements Part {
    @Override
    public PartKind kind() {
      return PartKind.ANCHOR;
    }
  }

  /**
   * A make-up of glass, ply by ply from outdoors.
   *
   * @param mostWidth largest width that is made, {@code mostHeight} largest height
   * @param shearModulus of its interlayers, for the load's duration and temperature, as their maker
   *     gives it
   * @param leastWidth smallest width that is made, {@code leastHeight} smallest height
   * @param mostArea largest area that is made
   * @param edgePsi linear transmittance where its edge meets the frame
   * @param billed width and height are billed rounded up to a multiple of it, if that is agreed
   */
  record Glass(
      String name,
      Origin origin,
      List<Layer> layers,
      Given<Boolean> opacified,
      Given<Boolean> safety,
      Optional<Given<Quantity>> uFactor,
      Optional<Given<Length>> mostWidth,
      Optional<Given<Length>> mostHeight,
      Optional<Given<Length>> bite,
      Optional<Given<Quantity>> shearModulus,
      Optional<Given<Length>> leastWidth,
      Optional<Given<Length>> leastHeight,
      Optional<Given<Quantity>> mostArea,
      Optional<Given<Quantity>> edgePsi,
      Optional<Given<Length>> billed)
      implements Part {
    @Override
    public PartKind kind() {
      return PartKind.GLASS;
    }
  }

  /**
   * A layer of a glass make-up.
   *
   * @param what {@code ply}, {@code space} or {@code interlayer}
   * @param thickness nominal
   * @param words heat treatment, tint, gas, coating and its surface, in the order written
   */
  record Layer(String what, Length thickness, List<String> words, Origin origin) {}

  /** A metal spread plate at an end member. */
  record SpreadPlate(
      String name, Origin origin, Given<String> metal, Optional<Given<Length>> thickness)
      implements Part {
    @Override
    public PartKind kind() {
      return PartKind.SPREAD_PLATE;
    }
  }

  /**
   * A pressure plate.
   *
   * @param endGap clearance of a horizontal plate at each end, and the gap of stock joints
   * @param spacing most distance between fasteners; {@code endDistance} of the first from the end
   * @param weeps the side of a horizontal one its weeps are on: {@code upper} or {@code lower}
   */
  record PressurePlate(
      String name,
      Origin origin,
      Given<Length> width,
      Given<Length> endGap,
      Given<Length> spacing,
      Given<Length> endDistance,
      List<Stock> stock,
      Optional<Given<String>> fastener,
      Given<String> weeps)
      implements Part {
    /** A plate whose weeps are where common practice has them. */
    public PressurePlate(
        String name,
        Origin origin,
        Given<Length> width,
        Given<Length> endGap,
        Given<Length> spacing,
        Given<Length> endDistance,
        List<Stock> stock,
        Optional<Given<String>> fastener) {
      this(
          name,
          origin,
          width,
          endGap,
          spacing,
          endDistance,
          stock,
          fastener,
          Given.assumed("upper", origin, "common practice"));
    }

    @Override
    public PartKind kind() {
      return PartKind.PRESSURE_PLATE;
    }
  }

  /** A face cap. */
  record FaceCap(
      String name, Origin origin, Given<Length> face, Given<Length> endGap, List<Stock> stock)
      implements Part {
    @Override
    public PartKind kind() {
      return PartKind.FACE_CAP;
    }
  }

  /** A bolt or screw. */
  record Fastener(
      String name,
      Origin origin,
      Given<String> metal,
      Optional<Given<Length>> diameter,
      Optional<Given<Length>> length)
      implements Part {
    @Override
    public PartKind kind() {
      return PartKind.FASTENER;
    }
  }

  /**
   * A part of which only name, metal and free facts are kept: gasket, setting block, zone dam,
   * sealant, isolation, metal, finish, insulation.
   *
   * @param facts the remaining properties by word, each as written
   */
  record Plain(
      PartKind kind,
      String name,
      Origin origin,
      Optional<Given<String>> metal,
      Map<String, Given<String>> facts)
      implements Part {
    public Plain {
      facts = Map.copyOf(facts);
    }
  }
}
