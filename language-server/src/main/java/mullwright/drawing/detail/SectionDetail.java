package mullwright.drawing.detail;

import java.util.ArrayList;
import java.util.List;
import mullwright.drawing.Align;
import mullwright.drawing.Box;
import mullwright.drawing.DimensionString;
import mullwright.drawing.Drawing;
import mullwright.drawing.Figures;
import mullwright.drawing.Hatch;
import mullwright.drawing.Layer;
import mullwright.drawing.Lettering;
import mullwright.drawing.Measuring;
import mullwright.drawing.Paragraph;
import mullwright.drawing.Pen;
import mullwright.drawing.Scale;
import mullwright.drawing.Subject;
import mullwright.drawing.Surface;
import mullwright.drawing.Tone;
import mullwright.model.Outline;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * A section through a member and what meets there: its outline, the glass by its plies with bite,
 * edge clearance and setting block, plate and cap.
 *
 * <p>The origin of the paper lies on the member's line, in the outer face of the glass.
 */
final class SectionDetail implements Drawing {
  /** How much of what goes on is shown beyond the sightline [mm]. */
  private static final double GOES_ON = 55;

  /** Drawn depths of what the catalog states none of [mm]. */
  private static final double GASKET = 6;

  private static final double PLATE = 5;
  private static final double CAP = 18;
  private static final double CAP_WALL = 2;
  private static final double SOFT_WIDTH = 9;
  private static final double BUILDING = 30;

  /** Most that the name of a lite takes beside an upright or a level one [mm of paper]. */
  private static final double WIDE_NAME = 50;

  private static final double NAME = 25;

  private final Joint joint;
  private final int number;
  private final Scale scale;
  private final Figures figures;
  private final Across across;
  private final double front;
  private final Box extent;

  SectionDetail(Joint joint, int number, Scale scale, Figures figures) {
    this.joint = joint;
    this.number = number;
    this.scale = scale;
    this.figures = figures;
    this.across = new Across(joint.upright(), scale);
    this.front =
        outline().stream().mapToDouble(one -> mm(one.z().plus(one.depth()))).max().orElse(0)
            - mm(joint.plane());
    this.extent = Measuring.of(this);
  }

  private static double mm(Length length) {
    return length.toMillimetres();
  }

  private List<Outline.Rectangle> outline() {
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
    surface.beginLayer(Layer.DIMENSION);
    acrossDimensions(surface);
    depthDimensions(surface);
    surface.endLayer();
    surface.beginLayer(Layer.NOTE);
    notes(surface);
    glassName(surface, joint.less(), -1);
    glassName(surface, joint.more(), 1);
    new DetailTitle(number, joint.title(), words(), scale)
        .paint(surface, left() - 22, bottom() - 32);
    surface.endLayer();
  }

  // --- the member

  private void member(Surface surface) {
    List<Outline.Rectangle> all = outline();
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

  // --- what stands beside it

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

  // the far end goes on and has no edge
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

  // --- how far it reaches

  private double outermost() {
    return joint.plate().isEmpty() ? 0 : GASKET + PLATE + CAP;
  }

  private double reach(Joint.Side side) {
    return side.glass() || side.kind() == Joint.Side.Kind.OPENING
        ? mm(side.sight()) + GOES_ON
        : mm(joint.profile().face().value()) / 2 + mm(joint.perimeter()) + BUILDING;
  }

  private Box whole() {
    return across.box(
        -reach(joint.less()), -mm(joint.plane()) - 8, reach(joint.more()), outermost());
  }

  private double left() {
    return whole().left();
  }

  private double right() {
    return whole().right();
  }

  private double bottom() {
    return whole().bottom();
  }

  private double top() {
    return whole().top();
  }

  // --- dimensions

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

  // a string of parts next to the section and one of their sum beyond it
  private void strings(Surface surface, List<Length> places, boolean byWidth) {
    boolean level = byWidth != joint.upright();
    Box whole = whole();
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
    double from = level ? whole.bottom() : mirrored() ? whole.right() : whole.left();
    int way = !level && mirrored() ? 1 : -1;
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

  // --- words

  // notes stand where the building is, dimensions where the glass is
  private boolean mirrored() {
    return !joint.upright() && joint.less().kind() == Joint.Side.Kind.NOTHING;
  }

  private void notes(Surface surface) {
    Notes outer = new Notes();
    Notes inner = new Notes();
    int side = mirrored() ? -1 : 1;
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
    inner.paint(surface, mirrored() ? left() - 10 : right() + 10, Double.NEGATIVE_INFINITY);
    outer.paint(surface, scale.paper(-outermost()) - 6, scale.paper(wall) + 6);
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

  private String words() {
    List<String> places = joint.places();
    return (joint.upright()
            ? "Upright section, outdoors left. "
            : "Level section, outdoors below. ")
        + (places.size() == 1 ? "" : "At " + places.size() + " members: ")
        + String.join("; ", places);
  }
}
