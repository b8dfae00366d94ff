package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import mullwright.derivation.Derivation;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.SpliceJoint;
import mullwright.layout.SystemPart;
import mullwright.model.AnchorUse;
import mullwright.model.Origin;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * Something fixed to a vertical near a splice, which the joint and its sleeve must keep clear of.
 *
 * @param name as the shop names it
 * @param origin the statement that made it
 * @param from lower end of what it takes of the vertical, {@code to} upper end
 */
public record JointObstacle(String name, Origin origin, Length from, Length to) {

  /**
   * What is fixed to the vertical of a line: horizontals with their shear blocks, anchors. A
   * horizontal takes its face or its shear block's length, whichever is more; an anchor takes its
   * stated height round its bolt line, or the bolt line alone.
   */
  static List<JointObstacle> of(WallAnalysis analysis, int line) {
    Length block =
        SystemPart.shearBlock(analysis.layout())
            .map(part -> part.length().value())
            .orElse(Length.ZERO);
    List<JointObstacle> found = new ArrayList<>();
    for (HorizontalPiece horizontal : analysis.horizontalsOn(line)) {
      boolean left = horizontal.leftLine() == line;
      Length centre = left ? horizontal.yLeft() : horizontal.yRight();
      Length half = Length.max(horizontal.profile().face().value(), block).half();
      found.add(round(horizontal.name(), horizontal.origin(), centre, half));
    }
    for (PlacedAnchor anchor : analysis.anchorsOf(line)) {
      if (anchor.use().kind() != AnchorUse.Kind.CLIP) {
        Length half =
            anchor
                .part()
                .flatMap(Part.Anchor::height)
                .map(height -> height.value().half())
                .orElse(Length.ZERO);
        found.add(round(anchor.name(), anchor.use().origin(), anchor.y(), half));
      }
    }
    return List.copyOf(found);
  }

  /** What is fixed to the vertical of a splice and reaches nearer to its centre than that. */
  public static List<JointObstacle> within(WallAnalysis analysis, SpliceJoint joint, Length reach) {
    Length from = joint.y().minus(reach);
    Length to = joint.y().plus(reach);
    List<JointObstacle> near = new ArrayList<>(2);
    for (JointObstacle obstacle : analysis.obstaclesOn(joint.line(), from, to)) {
      if (obstacle.from.isShorterThan(to) && obstacle.to.isLongerThan(from)) {
        near.add(obstacle);
      }
    }
    return near;
  }

  private static JointObstacle round(String name, Origin origin, Length centre, Length half) {
    return new JointObstacle(name, origin, centre.minus(half), centre.plus(half));
  }

  /**
   * Clear distance from a stretch of the vertical round a splice; negative where they overlap.
   *
   * @param half half the stretch: half the gap, or half the sleeve
   */
  public Length clearance(SpliceJoint joint, Length half) {
    Length above = from.minus(joint.y().plus(half));
    Length below = joint.y().minus(half).minus(to);
    return Length.max(above, below);
  }

  /** {@link #clearance} with how it came about. */
  public Derivation measured(SpliceJoint joint, String what, Length half) {
    return Derivation.computed(
        "clear distance",
        clearance(joint, half),
        "distance between " + what + " and " + name,
        "conventions of measure",
        Derivation.stated("height of the splice", joint.y(), joint.splice().at().origin()),
        Derivation.computed("half of " + what, half, "from the splice's centre", "geometry"));
  }
}
