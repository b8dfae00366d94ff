package mullwright.analysis.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.derivation.Derivation;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.SpliceJoint;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.AnchorUse;
import mullwright.model.Given;
import mullwright.model.Origin;
import mullwright.model.Part;
import mullwright.model.PartKind;
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
    Length block = shearBlock(analysis.layout());
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
    for (JointObstacle obstacle : analysis.obstaclesOn(joint.line())) {
      if (obstacle.from.isShorterThan(to) && obstacle.to.isLongerThan(from)) {
        near.add(obstacle);
      }
    }
    return near;
  }

  private static JointObstacle round(String name, Origin origin, Length centre, Length half) {
    return new JointObstacle(name, origin, centre.minus(half), centre.plus(half));
  }

  private static Length shearBlock(WallLayout layout) {
    return layout
        .wall()
        .system()
        .flatMap(system -> Optional.ofNullable(system.parts().get(PartKind.SHEAR_BLOCK)))
        .flatMap(name -> layout.catalog().find(Part.ShearBlock.class, name.value()))
        .map(part -> part.length().value())
        .orElse(Length.ZERO);
  }

  /** The sleeve of a splice: its own, else its profile's, else the system's. */
  public static Optional<Part.Sleeve> sleeve(WallLayout layout, SpliceJoint joint) {
    VerticalPiece below = layout.verticals().get(joint.below());
    Optional<Given<String>> named =
        joint
            .splice()
            .sleeve()
            .or(() -> below.profile().sleeve())
            .or(
                () ->
                    layout
                        .wall()
                        .system()
                        .flatMap(s -> Optional.ofNullable(s.parts().get(PartKind.SLEEVE))));
    return named.flatMap(name -> layout.catalog().find(Part.Sleeve.class, name.value()));
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
