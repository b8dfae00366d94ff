package mullwright.drawing.detail;

import static mullwright.drawing.detail.SectionPlan.CAP;
import static mullwright.drawing.detail.SectionPlan.GASKET;
import static mullwright.drawing.detail.SectionPlan.GOES_ON;
import static mullwright.drawing.detail.SectionPlan.PLATE;
import static mullwright.drawing.detail.SectionPlan.mm;

import java.util.List;
import mullwright.drawing.Align;
import mullwright.drawing.Figures;
import mullwright.drawing.Lettering;
import mullwright.drawing.Paragraph;
import mullwright.drawing.Scale;
import mullwright.drawing.Surface;

/** Paints the words of a section: what its parts are, and by whom. */
final class SectionNotes {
  /** Most that the name of a lite takes beside an upright or a level one [mm of paper]. */
  private static final double WIDE_NAME = 50;

  private static final double NAME = 25;

  private final SectionPlan plan;
  private final Joint joint;
  private final Scale scale;
  private final Figures figures;
  private final Across across;
  private final double front;

  SectionNotes(SectionPlan plan) {
    this.plan = plan;
    this.joint = plan.joint();
    this.scale = plan.scale();
    this.figures = plan.figures();
    this.across = plan.across();
    this.front = plan.front();
  }

  /** Paints the notes with their leaders, and the names of the glass. */
  void paint(Surface surface) {
    notes(surface);
    glassName(surface, joint.less(), -1);
    glassName(surface, joint.more(), 1);
  }

  private void notes(Surface surface) {
    Notes outer = new Notes();
    Notes inner = new Notes();
    int side = plan.mirrored() ? -1 : 1;
    double wall = mm(joint.profile().face().value()) / 2;
    double plane = mm(joint.plane());
    inner.at(
        joint.upright()
            ? across.point(wall * 0.5, -plane)
            : across.point(side * wall, -plane + (front + plane) * 0.3),
        joint.profile().name()
            + joint.profile().alloy().map(alloy -> ", " + alloy.value()).orElse(""));
    beside(inner, joint.less(), -1);
    beside(inner, joint.more(), 1);
    // from the left of an upright section nothing lies between a fitting and its note
    Notes fittings = joint.upright() ? outer : inner;
    block(fittings, joint.more());
    joint
        .plate()
        .ifPresent(
            plate ->
                fittings.at(
                    across.point(side * (mm(plate) / 2 - 0.5), GASKET + PLATE / 2),
                    "pressure plate "
                        + figures.of(plate)
                        + joint.screw().map(screw -> ", " + screw.name()).orElse("")));
    joint
        .cap()
        .filter(cap -> joint.plate().isPresent())
        .ifPresent(
            cap ->
                fittings.at(
                    across.point(side * mm(cap) / 2, GASKET + PLATE + CAP * 0.7),
                    "face cap " + figures.of(cap)));
    inner.paint(
        surface, plan.mirrored() ? plan.left() - 10 : plan.right() + 10, Double.NEGATIVE_INFINITY);
    outer.paint(surface, scale.paper(-plan.outermost()) - 6, scale.paper(wall) + 6);
  }

  private void block(Notes notes, Joint.Side side) {
    side.block()
        .filter(block -> side.clearance().signum() > 0)
        .ifPresent(
            block ->
                notes.at(
                    across.point(
                        mm(side.metal().plus(side.edge()).half()), -mm(side.thickness()) * 0.25),
                    "setting blocks " + figures.of(block) + " long, at the quarter points"));
  }

  private void beside(Notes notes, Joint.Side side, int sign) {
    double wall = mm(joint.profile().face().value()) / 2;
    if (side.kind() == Joint.Side.Kind.OPENING) {
      notes.at(
          across.point(sign * (mm(side.sight()) + GOES_ON * 0.4), -mm(joint.plane()) / 2),
          "opening " + side.name() + ", by others");
    } else if (side.kind() == Joint.Side.Kind.NOTHING) {
      notes.at(
          across.point(sign * (wall + mm(joint.perimeter()) * 0.7), -mm(joint.plane()) + 8),
          "joint "
              + figures.of(joint.perimeter())
              + (joint.perimeterStated() ? "" : " (default)")
              + ", sealed both sides; building by others");
    }
  }

  private void glassName(Surface surface, Joint.Side side, int sign) {
    if (side.kind() != Joint.Side.Kind.GLASS) {
      return;
    }
    double[] point = across.point(sign * (mm(side.sight()) + GOES_ON), -mm(side.thickness()));
    Lettering lettering = Lettering.NOTE;
    double pitch = lettering.height() * Lettering.LINE_PITCH;
    String words = side.layers().isEmpty() ? side.name() + ": not in the catalog" : side.name();
    double width = joint.upright() ? WIDE_NAME : Math.max(NAME, scale.paper(GOES_ON));
    List<String> lines = Paragraph.lines(words, lettering, width);
    boolean down = joint.upright() && sign > 0;
    double first =
        down ? point[1] - lettering.height() - 1 : point[1] + 1.5 + (lines.size() - 1) * pitch;
    Align align = joint.upright() || sign < 0 ? Align.LEFT : Align.RIGHT;
    for (int at = 0; at < lines.size(); at++) {
      surface.text(
          lines.get(at),
          joint.upright() ? point[0] + 2 : point[0],
          first - at * pitch,
          lettering,
          align);
    }
  }
}
