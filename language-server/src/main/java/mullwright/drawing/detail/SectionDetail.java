package mullwright.drawing.detail;

import java.util.List;
import mullwright.drawing.Box;
import mullwright.drawing.Drawing;
import mullwright.drawing.Figures;
import mullwright.drawing.Layer;
import mullwright.drawing.Measuring;
import mullwright.drawing.Scale;
import mullwright.drawing.Surface;

/**
 * A section through a member and what meets there: its outline, the glass by its plies with bite,
 * edge clearance and setting block, plate and cap.
 *
 * <p>The origin of the paper lies on the member's line, in the outer face of the glass.
 */
final class SectionDetail implements Drawing {
  private final Joint joint;
  private final int number;
  private final Scale scale;
  private final SectionPlan plan;
  private final Box extent;

  SectionDetail(Joint joint, int number, Scale scale, Figures figures) {
    this.joint = joint;
    this.number = number;
    this.scale = scale;
    this.plan = SectionPlan.of(joint, scale, figures);
    this.extent = Measuring.of(this);
  }

  @Override
  public String title() {
    return joint.title();
  }

  @Override
  public Scale scale() {
    return scale;
  }

  @Override
  public Box extent() {
    return extent;
  }

  @Override
  public void paint(Surface surface) {
    new SectionParts(plan).paint(surface);
    surface.beginLayer(Layer.DIMENSION);
    new SectionDimensions(plan).paint(surface);
    surface.endLayer();
    surface.beginLayer(Layer.NOTE);
    new SectionNotes(plan).paint(surface);
    new DetailTitle(number, joint.title(), words(), scale)
        .paint(surface, plan.left() - 22, plan.bottom() - 32);
    surface.endLayer();
  }

  private String words() {
    List<String> places = joint.places();
    return (joint.upright()
            ? "Upright section, outdoors left. "
            : "Level section, outdoors below. ")
        + (places.size() == 1 ? "" : "At " + places.size() + " members: ")
        + String.join("; ", places);
  }
}
