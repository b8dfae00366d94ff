package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.layout.DrilledHole;
import mullwright.layout.HoleSide;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.SpliceJoint;
import mullwright.layout.SystemPart;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.AnchorUse;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.quantity.Ascending;
import mullwright.quantity.Length;

/**
 * A hole that runs into another hole of the same wall of a piece, or lies where another part covers
 * it.
 *
 * <p>An anchor's hole may not lie behind the end of a horizontal, nor a shear block's behind an
 * anchor; a clip's or a bracket's screw may not go into a splice sleeve, which would pin it. A clip
 * is fixed before the horizontal that hides it, so it may lie behind one.
 *
 * @param hole the hole
 * @param other the other hole, if it is one
 * @param with what it runs into, as the shop names it
 * @param by how far they overlap
 */
public record HoleMeeting(DrilledHole hole, Optional<DrilledHole> other, String with, Length by) {

  /** Every meeting in a vertical, from below. */
  public static List<HoleMeeting> of(WallAnalysis analysis, VerticalPiece piece) {
    List<DrilledHole> holes = analysis.holes().vertical(piece.index());
    List<HoleMeeting> found = new ArrayList<>(pairs(holes));
    bodies(analysis, piece, holes, found);
    sleeve(analysis.layout(), piece, piece.spliceBelow(), true, holes, found);
    sleeve(analysis.layout(), piece, piece.spliceAbove(), false, holes, found);
    return found;
  }

  /** Holes of a piece that run into each other; they stand in their order along it. */
  public static List<HoleMeeting> pairs(List<DrilledHole> holes) {
    List<HoleMeeting> found = new ArrayList<>();
    for (int i = 0; i < holes.size(); i++) {
      DrilledHole hole = holes.get(i);
      if (!hole.placed()) {
        continue;
      }
      for (int j = i + 1; j < holes.size(); j++) {
        DrilledHole other = holes.get(j);
        if (!other.placed() || !hole.side().meets(other.side())) {
          continue;
        }
        // in ticks first: nearly all are far apart, in a tower tens of thousands
        if (farApart(hole, other)) {
          break;
        }
        Length reach = reach(hole, other);
        if (!other.along().minus(hole.along()).isShorterThan(reach)) {
          break;
        }
        Length apart = apart(hole, other);
        if (apart.isShorterThan(reach)) {
          // told of what can be moved by itself: a block sits where its horizontal does
          boolean block = hole.purpose() == DrilledHole.Purpose.SHEAR_BLOCK;
          DrilledHole one = block ? other : hole;
          DrilledHole two = block ? hole : other;
          found.add(new HoleMeeting(one, Optional.of(two), named(two), reach.minus(apart)));
        }
      }
    }
    return found;
  }

  private static String named(DrilledHole hole) {
    return "hole for the " + hole.purpose().words() + " (" + hole.partner() + ")";
  }

  /** Distance between two centres. */
  static Length apart(DrilledHole one, DrilledHole other) {
    long along = other.along().minus(one.along()).ticks();
    long back = other.back().orElseThrow().minus(one.back().orElseThrow()).ticks();
    if (along == 0 || back == 0) {
      return new Length(Math.abs(along + back));
    }
    return Length.nearest(Math.hypot(new Length(along).toMetres(), new Length(back).toMetres()));
  }

  /** True if the two run into each other. */
  static boolean overlap(DrilledHole one, DrilledHole other, Length apart) {
    return apart.isShorterThan(reach(one, other));
  }

  /** True if two that follow one another are surely further apart than they reach. */
  private static boolean farApart(DrilledHole one, DrilledHole other) {
    long apart = other.along().ticks() - one.along().ticks();
    long both = one.diameter().orElseThrow().ticks() + other.diameter().orElseThrow().ticks();
    return apart > both;
  }

  private static Length reach(DrilledHole one, DrilledHole other) {
    return one.diameter().orElseThrow().plus(other.diameter().orElseThrow()).half();
  }

  private static void bodies(
      WallAnalysis analysis,
      VerticalPiece piece,
      List<DrilledHole> holes,
      List<HoleMeeting> found) {
    for (PlacedAnchor anchor : analysis.anchorsOn(piece)) {
      if (anchor.use().kind() == AnchorUse.Kind.CLIP) {
        continue;
      }
      Optional<Length> height = anchor.part().flatMap(Part.Anchor::height).map(Given::value);
      if (height.isEmpty()) {
        continue;
      }
      long at = anchor.y().minus(piece.bottom()).ticks();
      long half = height.get().half().ticks();
      for (int i = beyond(holes, at - half); i < holes.size(); i++) {
        DrilledHole hole = holes.get(i);
        long off = Math.abs(hole.along().ticks() - at);
        if (off >= half) {
          break;
        }
        if (hole.purpose() == DrilledHole.Purpose.SHEAR_BLOCK) {
          found.add(new HoleMeeting(hole, Optional.empty(), anchor.name(), new Length(half - off)));
          break;
        }
      }
    }
    for (DrilledHole hole : holes) {
      if (hole.purpose() == DrilledHole.Purpose.ANCHOR) {
        behind(analysis, piece, hole, found);
      }
    }
  }

  /** Place of the first hole that is further along than that [ticks]. */
  private static int beyond(List<DrilledHole> holes, long along) {
    return Ascending.leading(holes.size(), i -> holes.get(i).along().ticks() <= along);
  }

  private static void behind(
      WallAnalysis analysis, VerticalPiece piece, DrilledHole hole, List<HoleMeeting> found) {
    Length height = hole.along().plus(piece.bottom());
    Length most = analysis.widestHalfFace();
    for (HorizontalPiece horizontal :
        analysis.horizontalsOn(piece.line(), height.minus(most), height.plus(most))) {
      boolean right = horizontal.leftLine() == piece.line();
      if (!hole.side().meets(right ? HoleSide.RIGHT : HoleSide.LEFT)) {
        continue;
      }
      Length off = height.minus(right ? horizontal.yLeft() : horizontal.yRight()).abs();
      Length half = horizontal.profile().face().value().half();
      if (off.isShorterThan(half)) {
        found.add(
            new HoleMeeting(
                hole, Optional.empty(), "end of " + horizontal.name(), half.minus(off)));
        return;
      }
    }
  }

  private static void sleeve(
      WallLayout layout,
      VerticalPiece piece,
      int splice,
      boolean below,
      List<DrilledHole> holes,
      List<HoleMeeting> found) {
    if (splice < 0) {
      return;
    }
    SpliceJoint joint = layout.splices().get(splice);
    Optional<Part.Sleeve> sleeve = SystemPart.sleeve(layout, joint);
    if (sleeve.isEmpty()) {
      return;
    }
    Length reach = sleeve.get().length().value().minus(joint.splice().gap().value()).half();
    for (DrilledHole hole : holes) {
      boolean screwed =
          hole.purpose() == DrilledHole.Purpose.CLIP
              || hole.purpose() == DrilledHole.Purpose.BRACKET;
      if (!screwed) {
        continue;
      }
      Length fromJoint = below ? hole.along() : piece.length().minus(hole.along());
      if (fromJoint.isShorterThan(reach)) {
        found.add(
            new HoleMeeting(
                hole,
                Optional.empty(),
                "sleeve " + sleeve.get().name() + " of the " + joint.name(),
                reach.minus(fromJoint)));
      }
    }
  }
}
