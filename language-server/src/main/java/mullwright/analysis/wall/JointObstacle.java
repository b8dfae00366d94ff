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
   * What is fixed to the vertical within a reach of a splice: horizontals with their shear blocks,
   * anchors. A horizontal takes its face or its shear block's length, whichever is more; an anchor
   * takes its stated height round its bolt line, or the bolt line alone.
   *
   * @param reach distance from the splice within which it counts
   */
  public static List<JointObstacle> within(WallAnalysis analysis, SpliceJoint joint, Length reach) {
    WallLayout layout = analysis.layout();
    Length block = shearBlock(layout);
    List<JointObstacle> found = new ArrayList<>();
    for (HorizontalPiece horizontal : analysis.horizontalsOn(joint.line())) {
      boolean left = horizontal.leftLine() == joint.line();
      Length centre = left ? horizontal.yLeft() : horizontal.yRight();
      Length half = Length.max(horizontal.profile().face().value(), block).half();
      if (isNear(joint, centre, half, reach)) {
        found.add(round(horizontal.name(), horizontal.origin(), centre, half));
      }
    }
    for (PlacedAnchor anchor : analysis.anchorsOf(joint.line())) {
      if (anchor.use().kind() != AnchorUse.Kind.CLIP) {
        Length half =
            anchor
                .part()
                .flatMap(Part.Anchor::height)
                .map(height -> height.value().half())
                .orElse(Length.ZERO);
        if (isNear(joint, anchor.y(), half, reach)) {
          found.add(round(anchor.name(), anchor.use().origin(), anchor.y(), half));
        }
      }
    }
    return found;
  }

  private static boolean isNear(SpliceJoint joint, Length centre, Length half, Length reach) {
    return centre.minus(joint.y()).abs().isShorterThan(half.plus(reach));
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
