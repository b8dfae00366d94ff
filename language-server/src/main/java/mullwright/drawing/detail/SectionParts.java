package mullwright.drawing.detail;

import static mullwright.drawing.detail.SectionPlan.BUILDING;
import static mullwright.drawing.detail.SectionPlan.CAP;
import static mullwright.drawing.detail.SectionPlan.GASKET;
import static mullwright.drawing.detail.SectionPlan.GOES_ON;
import static mullwright.drawing.detail.SectionPlan.PLATE;
import static mullwright.drawing.detail.SectionPlan.mm;

import java.util.List;
import mullwright.drawing.Box;
import mullwright.drawing.Hatch;
import mullwright.drawing.Layer;
import mullwright.drawing.Pen;
import mullwright.drawing.Scale;
import mullwright.drawing.Subject;
import mullwright.drawing.Surface;
import mullwright.drawing.Tone;
import mullwright.model.Outline;
import mullwright.model.Part;

/** Paints what a section cuts through: member, glass, gaskets, plate, cap, the building. */
final class SectionParts {
  private static final double CAP_WALL = 2;
  private static final double SOFT_WIDTH = 9;

  private final Joint joint;
  private final Scale scale;
  private final Across across;
  private final double front;

  SectionParts(SectionPlan plan) {
    this.joint = plan.joint();
    this.scale = plan.scale();
    this.across = plan.across();
    this.front = plan.front();
  }

  /** Paints the member, what stands on both sides of it, and what covers it. */
  void paint(Surface surface) {
    perimeter(surface, joint.less(), -1);
    perimeter(surface, joint.more(), 1);
    surface.beginLayer(Layer.MEMBER);
    surface.begin(Subject.of("detail", joint.title() + " " + joint.profile().name()));
    member(surface);
    surface.end();
    surface.endLayer();
    glass(surface, joint.less(), -1);
    glass(surface, joint.more(), 1);
    fittings(surface);
  }

  private void member(Surface surface) {
    List<Outline.Rectangle> all = SectionPlan.outline(joint);
    for (int at = 0; at < all.size(); at++) {
      Outline.Rectangle one = all.get(at);
      if (one.hole()) {
        continue;
      }
      boolean hollow = at + 1 < all.size() && all.get(at + 1).hole();
      cut(surface, box(one), hollow ? List.of(box(all.get(at + 1))) : List.of());
    }
    if (front < 0) {
      double less = tongue(joint.less(), joint.more());
      double more = tongue(joint.more(), joint.less());
      cut(surface, across.box(-less, front, more, 0), List.of());
    }
  }

  private static double tongue(Joint.Side side, Joint.Side other) {
    Joint.Side from = side.glass() ? side : other;
    return from.glass() ? Math.max(1, mm(from.metal())) : 4;
  }

  private Box box(Outline.Rectangle one) {
    double u = mm(one.x());
    double z = mm(one.z()) - mm(joint.plane());
    return across.box(u, z, u + mm(one.width()), z + mm(one.depth()));
  }

  private static void cut(Surface surface, Box box, List<Box> holes) {
    surface.box(box, null, Tone.METAL);
    holes.forEach(hole -> surface.box(hole, null, Tone.PAPER));
    surface.hatch(box.corners(), Hatch.METAL, holes);
    surface.box(box, Pen.CUT, null);
    holes.forEach(hole -> surface.box(hole, Pen.CUT, null));
  }

  private void glass(Surface surface, Joint.Side side, int sign) {
    if (!side.glass()) {
      return;
    }
    double edge = sign * mm(side.edge());
    double end = sign * (mm(side.sight()) + GOES_ON);
    double thick = mm(side.thickness());
    surface.beginLayer(Layer.LITE);
    surface.begin(Subject.of("glass", side.name()));
    if (front > -thick) {
      // the outline of the catalog tells nothing of its pocket
      double metal = sign * Math.max(0, mm(side.metal()));
      surface.box(across.box(metal, -thick, sign * mm(side.sight()), 0), Pen.CUT, Tone.PAPER);
    }
    double z = 0;
    for (Part.Layer layer : side.layers()) {
      double to = z - mm(layer.thickness());
      Box box = across.box(edge, z, end, to);
      if (layer.what().equals("ply")) {
        surface.box(box, null, Tone.GLASS);
        surface.hatch(box.corners(), Hatch.GLASS, List.of());
        edges(surface, edge, z, end, to);
      } else if (layer.what().equals("interlayer")) {
        surface.box(box, null, Tone.SOFT);
      } else {
        surface.box(across.box(edge, z, end, to), null, Tone.PAPER);
        Box seal = across.box(edge, z, edge + sign * Math.min(mm(side.bite()), SOFT_WIDTH), to);
        surface.hatch(seal.corners(), Hatch.SOFT, List.of());
        surface.box(seal, Pen.THIN, null);
      }
      z = to;
    }
    surface.end();
    surface.endLayer();
    double soft = sign * (mm(side.sight()) - Math.min(mm(side.bite()), SOFT_WIDTH));
    double sight = sign * mm(side.sight());
    surface.beginLayer(Layer.FITTING);
    if (-thick > front) {
      soft(surface, across.box(soft, front, sight, -thick));
    }
    if (joint.plate().isPresent()) {
      soft(surface, across.box(soft, 0, sight, GASKET));
    }
    if (side.block().isPresent() && side.clearance().signum() > 0) {
      soft(surface, across.box(sign * mm(side.metal()), -thick, edge, 0));
    }
    surface.endLayer();
  }

  private void edges(Surface surface, double edge, double z, double end, double to) {
    double[] a = across.point(end, z);
    double[] b = across.point(edge, z);
    double[] c = across.point(edge, to);
    double[] d = across.point(end, to);
    surface.polyline(new double[] {a[0], a[1], b[0], b[1], c[0], c[1], d[0], d[1]}, Pen.EDGE);
  }

  private static void soft(Surface surface, Box box) {
    surface.box(box, null, Tone.PAPER);
    surface.hatch(box.corners(), Hatch.SOFT, List.of());
    surface.box(box, Pen.FINE_EDGE, null);
  }

  private void fittings(Surface surface) {
    if (joint.plate().isEmpty()) {
      return;
    }
    surface.beginLayer(Layer.FITTING);
    double half = mm(joint.plate().get()) / 2;
    cut(surface, across.box(-half, GASKET, half, GASKET + PLATE), List.of());
    joint
        .cap()
        .ifPresent(
            cap -> {
              double wide = mm(cap) / 2;
              double[] points = {
                -wide,
                GASKET + PLATE,
                -wide,
                GASKET + PLATE + CAP,
                wide,
                GASKET + PLATE + CAP,
                wide,
                GASKET + PLATE
              };
              surface.polyline(open(points), Pen.EDGE);
              double in = wide - CAP_WALL;
              double[] inner = {
                -in,
                GASKET + PLATE,
                -in,
                GASKET + PLATE + CAP - CAP_WALL,
                in,
                GASKET + PLATE + CAP - CAP_WALL,
                in,
                GASKET + PLATE
              };
              surface.polyline(open(inner), Pen.EDGE);
            });
    joint.screw().ifPresent(screw -> screw(surface, screw));
    surface.endLayer();
  }

  private double[] open(double[] uz) {
    double[] out = new double[uz.length];
    for (int at = 0; at < uz.length; at += 2) {
      double[] point = across.point(uz[at], uz[at + 1]);
      out[at] = point[0];
      out[at + 1] = point[1];
    }
    return out;
  }

  private void screw(Surface surface, Part.Fastener screw) {
    double half = screw.diameter().map(given -> mm(given.value())).orElse(5.0) / 2;
    double length = screw.length().map(given -> mm(given.value())).orElse(20.0);
    double under = GASKET + PLATE;
    surface.box(across.box(-half, under, half, under - length), Pen.FINE_EDGE, Tone.PAPER);
    surface.box(
        across.box(-2 * half, under, 2 * half, under + half * 1.2), Pen.FINE_EDGE, Tone.PAPER);
    double[] from = across.point(0, under + CAP + 6);
    double[] to = across.point(0, under - length - 6);
    surface.line(from[0], from[1], to[0], to[1], Pen.CENTRE);
  }

  private void perimeter(Surface surface, Joint.Side side, int sign) {
    if (side.kind() != Joint.Side.Kind.NOTHING) {
      return;
    }
    double metal = sign * mm(joint.profile().face().value()) / 2;
    double gap = sign * mm(joint.perimeter());
    double rear = -mm(joint.plane());
    surface.beginLayer(Layer.BUILDING);
    Box building = across.box(metal + gap, rear - 8, metal + gap + sign * BUILDING, front + 8);
    surface.hatch(building.corners(), Hatch.CONCRETE, List.of());
    double[] from = across.point(metal + gap, rear - 8);
    double[] to = across.point(metal + gap, front + 8);
    surface.line(from[0], from[1], to[0], to[1], Pen.CUT);
    surface.endLayer();
    surface.beginLayer(Layer.FITTING);
    double deep = Math.min(12, mm(joint.perimeter()));
    soft(surface, across.box(metal, front - 4, metal + gap, front - 4 - deep));
    double[] rod = across.point(metal + gap / 2, front - 4 - deep - Math.abs(gap) / 2);
    surface.circle(rod[0], rod[1], scale.paper(Math.abs(gap) / 2), Pen.FINE_EDGE, Tone.PAPER);
    soft(surface, across.box(metal, rear + 4, metal + gap, rear + 4 + deep));
    surface.endLayer();
  }
}
