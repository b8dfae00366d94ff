package mullwright.drawing.detail;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.drawing.Box;
import mullwright.drawing.DimensionString;
import mullwright.drawing.Drawing;
import mullwright.drawing.Figures;
import mullwright.drawing.Layer;
import mullwright.drawing.LineType;
import mullwright.drawing.LineWeight;
import mullwright.drawing.Measuring;
import mullwright.drawing.Pen;
import mullwright.drawing.Scale;
import mullwright.drawing.Subject;
import mullwright.drawing.Surface;
import mullwright.drawing.Tone;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * A splice seen from the left, outdoors on the left: both lengths, the open joint, the sleeve
 * within and its fasteners.
 *
 * <p>The origin of the paper lies in the middle of the joint, at the outer face of the glass.
 */
final class SpliceDetail implements Drawing {
  private static final double BEYOND = 60;
  private static final Pen WITHIN = new Pen(LineWeight.MEDIUM, LineType.DASHED, Tone.INK);

  private final Splice splice;
  private final int number;
  private final Scale scale;
  private final Figures figures;
  private final Box extent;

  /**
   * A kind of splice.
   *
   * @param plane from the outer face of the glass to the back of the profile
   * @param sleeve empty if the catalog has none
   * @param places where it is so
   */
  record Splice(
      Part.Profile profile,
      Length plane,
      Length gap,
      Optional<Part.Sleeve> sleeve,
      List<String> places) {}

  SpliceDetail(Splice splice, int number, Scale scale, Figures figures) {
    this.splice = splice;
    this.number = number;
    this.scale = scale;
    this.figures = figures;
    this.extent = Measuring.of(this);
  }

  private double p(Length length) {
    return scale.paper(length.toMillimetres());
  }

  private boolean lower() {
    return splice.sleeve().map(part -> part.fixedEnd().value().equals("lower")).orElse(true);
  }

  /** How far the sleeve reaches from the middle of the joint into the lower length. */
  private Length down(Part.Sleeve sleeve) {
    Length half = splice.gap().half();
    Length fixed = sleeve.engagement().value().plus(half);
    return lower() ? fixed : sleeve.length().value().minus(fixed);
  }

  private double tall() {
    double sleeve = splice.sleeve().map(part -> p(Length.max(down(part), up(part)))).orElse(0.0);
    return Math.max(sleeve, scale.paper(100)) + scale.paper(BEYOND);
  }

  private Length up(Part.Sleeve sleeve) {
    return sleeve.length().value().minus(down(sleeve));
  }

  @Override
  public String title() {
    return "Splice";
  }

  @Override
  public Scale scale() {
    return scale;
  }

  @Override
  public Box extent() {
    return extent;
  }

  private double front() {
    return p(splice.plane().minus(splice.profile().depth().value()));
  }

  private double back() {
    return p(splice.plane());
  }

  @Override
  public void paint(Surface surface) {
    double half = p(splice.gap()) / 2;
    surface.beginLayer(Layer.MEMBER);
    surface.begin(Subject.of("detail", "Splice " + splice.profile().name()));
    length(surface, -tall(), -half, -1);
    length(surface, half, tall(), 1);
    surface.end();
    surface.endLayer();
    surface.beginLayer(Layer.SPLICE);
    splice.sleeve().ifPresent(part -> sleeve(surface, part));
    surface.endLayer();
    surface.beginLayer(Layer.DIMENSION);
    dimensions(surface);
    surface.endLayer();
    surface.beginLayer(Layer.NOTE);
    notes().paint(surface, back() + 20, Double.NEGATIVE_INFINITY);
    new DetailTitle(number, "Splice", words(), scale).paint(surface, front() - 30, -tall() - 14);
    surface.endLayer();
  }

  private void length(Surface surface, double from, double to, int sign) {
    Box box = new Box(front(), from, back(), to);
    surface.box(box, null, Tone.METAL);
    double open = sign < 0 ? from : to;
    double cut = sign < 0 ? to : from;
    surface.polyline(
        new double[] {front(), open, front(), cut, back(), cut, back(), open}, Pen.EDGE);
    double middle = (front() + back()) / 2;
    surface.polyline(
        new double[] {
          front() - 2,
          open,
          middle - 2,
          open,
          middle - 0.8,
          open + 1.6,
          middle + 0.8,
          open - 1.6,
          middle + 2,
          open,
          back() + 2,
          open
        },
        Pen.THIN);
  }

  private void sleeve(Surface surface, Part.Sleeve part) {
    double wall =
        splice
            .profile()
            .outline()
            .filter(outline -> outline.value().rectangles().size() > 1)
            .map(outline -> outline.value().rectangles().get(1))
            .filter(hole -> hole.hole())
            .map(hole -> p(hole.z()))
            .orElse(0.8);
    surface.box(new Box(front() + wall, -p(down(part)), back() - wall, p(up(part))), WITHIN, null);
    double joint = (lower() ? -1 : 1) * p(splice.gap()) / 2;
    for (Part.Hole hole : part.holes()) {
      double y = joint + (lower() ? -1 : 1) * p(hole.along());
      double x = p(hole.back());
      double radius = Math.max(0.5, p(hole.diameter()) / 2);
      surface.circle(x, y, radius, Pen.FINE_EDGE, Tone.PAPER);
      surface.line(x - radius - 0.9, y, x + radius + 0.9, y, Pen.THIN);
      surface.line(x, y - radius - 0.9, x, y + radius + 0.9, Pen.THIN);
    }
  }

  private void dimensions(Surface surface) {
    Length half = splice.gap().half();
    List<Length> places = new ArrayList<>(List.of(half.negated(), half));
    List<Length> ends = new ArrayList<>();
    splice
        .sleeve()
        .ifPresent(
            part -> {
              places.add(0, down(part).negated());
              places.add(up(part));
              ends.add(down(part).negated());
              ends.add(up(part));
              Length fixed = lower() ? half.negated() : half;
              part.holes().stream()
                  .map(hole -> lower() ? fixed.minus(hole.along()) : fixed.plus(hole.along()))
                  .distinct()
                  .forEach(
                      place ->
                          string(
                              surface,
                              back(),
                              back() + 7,
                              place.compareTo(fixed) < 0
                                  ? List.of(place, fixed)
                                  : List.of(fixed, place)));
            });
    string(surface, front(), front() - 7, places);
    if (!ends.isEmpty()) {
      string(surface, front() - 7, front() - 7 - DimensionString.PITCH, ends);
    }
  }

  private void string(Surface surface, double from, double at, List<Length> places) {
    List<DimensionString.Part> parts = new ArrayList<>();
    for (int i = 1; i < places.size(); i++) {
      parts.add(
          new DimensionString.Part(
              p(places.get(i - 1)),
              p(places.get(i)),
              figures.of(places.get(i).minus(places.get(i - 1)))));
    }
    DimensionString.upright(at, from, parts).paint(surface);
  }

  private Notes notes() {
    Notes notes = new Notes();
    notes.at(new double[] {back(), tall() * 0.85}, splice.profile().name() + ", upper length");
    notes.at(new double[] {back(), -tall() * 0.85}, splice.profile().name() + ", lower length");
    notes.at(
        new double[] {back(), 0},
        "open joint "
            + figures.of(splice.gap())
            + " when set; keep it clear of sealant that would tie it");
    if (splice.sleeve().isPresent()) {
      Part.Sleeve part = splice.sleeve().get();
      notes.at(
          new double[] {back() - 3, p(up(part)) * 0.7},
          part.name()
              + ", "
              + figures.of(part.length().value())
              + " long, screwed to the "
              + part.fixedEnd().value()
              + " length, slides in the other");
    }
    return notes;
  }

  private String words() {
    return "Seen from the left, outdoors left. "
        + (splice.places().size() == 1 ? "" : "At " + splice.places().size() + " places: ")
        + String.join("; ", splice.places());
  }
}
