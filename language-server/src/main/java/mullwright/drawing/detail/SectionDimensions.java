package mullwright.drawing.detail;

import static mullwright.drawing.detail.SectionPlan.mm;

import java.util.ArrayList;
import java.util.List;
import mullwright.drawing.Box;
import mullwright.drawing.DimensionString;
import mullwright.drawing.Figures;
import mullwright.drawing.Scale;
import mullwright.drawing.Surface;
import mullwright.quantity.Length;

/** Paints the dimensions of a section. */
final class SectionDimensions {
  private final SectionPlan plan;
  private final Joint joint;
  private final Scale scale;
  private final Figures figures;
  private final double front;

  SectionDimensions(SectionPlan plan) {
    this.plan = plan;
    this.joint = plan.joint();
    this.scale = plan.scale();
    this.figures = plan.figures();
    this.front = plan.front();
  }

  /** Paints the dimensions across the section and along its depth. */
  void paint(Surface surface) {
    acrossDimensions(surface);
    depthDimensions(surface);
  }

  private void acrossDimensions(Surface surface) {
    List<Length> places = new ArrayList<>();
    Joint.Side less = joint.less();
    Joint.Side more = joint.more();
    places.add(less.sight().negated());
    if (less.glass()) {
      places.add(less.edge().negated());
      places.add(less.metal().negated());
    }
    if (more.glass()) {
      places.add(more.metal());
      places.add(more.edge());
    }
    places.add(more.sight());
    strings(surface, places, true);
  }

  private void depthDimensions(Surface surface) {
    List<Length> places = new ArrayList<>();
    places.add(joint.plane().negated());
    Length frontOf = Length.nearest(front / 1000);
    if (frontOf.signum() < 0) {
      places.add(frontOf);
    }
    Length thick = Length.max(thickness(joint.less()), thickness(joint.more()));
    if (thick.signum() > 0 && thick.isShorterThan(joint.plane())) {
      places.add(thick.negated());
    }
    places.add(Length.ZERO);
    places.sort(null);
    strings(surface, places.stream().distinct().toList(), false);
  }

  private static Length thickness(Joint.Side side) {
    return side.glass() ? side.thickness() : Length.ZERO;
  }

  private void strings(Surface surface, List<Length> places, boolean byWidth) {
    boolean level = byWidth != joint.upright();
    Box whole = plan.whole();
    // depths run from the front backwards, which is to the right, or up
    List<Length> onPaper =
        byWidth ? places : places.stream().map(Length::negated).sorted().toList();
    List<DimensionString.Part> parts = new ArrayList<>();
    for (int at = 1; at < onPaper.size(); at++) {
      Length size = onPaper.get(at).minus(onPaper.get(at - 1));
      parts.add(
          new DimensionString.Part(
              scale.paper(mm(onPaper.get(at - 1))),
              scale.paper(mm(onPaper.get(at))),
              figures.of(size)));
    }
    Length first = onPaper.get(0);
    Length last = onPaper.get(onPaper.size() - 1);
    DimensionString.Part all =
        new DimensionString.Part(
            scale.paper(mm(first)), scale.paper(mm(last)), figures.of(last.minus(first)));
    double from = level ? whole.bottom() : plan.mirrored() ? whole.right() : whole.left();
    int way = !level && plan.mirrored() ? 1 : -1;
    DimensionString near = string(level, from, from, parts);
    double at = from + way * Math.max(7, near.beside() + 2);
    string(level, at, from, parts).paint(surface);
    if (parts.size() > 1) {
      DimensionString far = string(level, at, at, List.of(all));
      double room = Math.max(DimensionString.PITCH, near.above() + far.beside() + 2);
      string(level, at + way * room, at, List.of(all)).paint(surface);
    }
  }

  private static DimensionString string(
      boolean level, double at, double from, List<DimensionString.Part> parts) {
    return level
        ? DimensionString.level(at, from, parts)
        : DimensionString.upright(at, from, parts);
  }
}
