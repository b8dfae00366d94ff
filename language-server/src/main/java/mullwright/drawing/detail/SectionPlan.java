package mullwright.drawing.detail;

import java.util.List;
import mullwright.drawing.Box;
import mullwright.drawing.Figures;
import mullwright.drawing.Scale;
import mullwright.model.Outline;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * What the parts of a section's drawing share: the joint, its scale, and how far it all reaches.
 *
 * @param front how far the metal comes forward of the outer face of the glass [mm], negative behind
 */
record SectionPlan(Joint joint, Scale scale, Figures figures, Across across, double front) {
  /** How much of what goes on is shown beyond the sightline [mm]. */
  static final double GOES_ON = 55;

  /** Drawn depths of what the catalog states none of [mm]. */
  static final double GASKET = 6;

  static final double PLATE = 5;
  static final double CAP = 18;
  static final double BUILDING = 30;

  static SectionPlan of(Joint joint, Scale scale, Figures figures) {
    double front =
        outline(joint).stream().mapToDouble(one -> mm(one.z().plus(one.depth()))).max().orElse(0)
            - mm(joint.plane());
    return new SectionPlan(joint, scale, figures, new Across(joint.upright(), scale), front);
  }

  static double mm(Length length) {
    return length.toMillimetres();
  }

  /** The rectangles of the member; its face and depth where the catalog gives no outline. */
  static List<Outline.Rectangle> outline(Joint joint) {
    Part.Profile profile = joint.profile();
    return profile
        .outline()
        .map(given -> given.value().rectangles())
        .orElseGet(
            () ->
                List.of(
                    new Outline.Rectangle(
                        profile.face().value().half().negated(),
                        Length.ZERO,
                        profile.face().value(),
                        profile.depth().value(),
                        false)));
  }

  /** How far the foremost part stands before the glass [mm]. */
  double outermost() {
    return joint.plate().isEmpty() ? 0 : GASKET + PLATE + CAP;
  }

  private double reach(Joint.Side side) {
    return side.glass() || side.kind() == Joint.Side.Kind.OPENING
        ? mm(side.sight()) + GOES_ON
        : mm(joint.profile().face().value()) / 2 + mm(joint.perimeter()) + BUILDING;
  }

  /** All that is drawn but notes and dimensions. */
  Box whole() {
    return across.box(
        -reach(joint.less()), -mm(joint.plane()) - 8, reach(joint.more()), outermost());
  }

  double left() {
    return whole().left();
  }

  double right() {
    return whole().right();
  }

  double bottom() {
    return whole().bottom();
  }

  double top() {
    return whole().top();
  }

  /** True if notes stand on the left and dimensions of the depth on the right. */
  boolean mirrored() {
    return !joint.upright() && joint.less().kind() == Joint.Side.Kind.NOTHING;
  }
}
