package mullwright.drawing.piece;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import mullwright.drawing.Align;
import mullwright.drawing.Box;
import mullwright.drawing.DimensionString;
import mullwright.drawing.Drawing;
import mullwright.drawing.Layer;
import mullwright.drawing.Lettering;
import mullwright.drawing.LineType;
import mullwright.drawing.LineWeight;
import mullwright.drawing.Measuring;
import mullwright.drawing.Paragraph;
import mullwright.drawing.Pen;
import mullwright.drawing.Scale;
import mullwright.drawing.Subject;
import mullwright.drawing.Surface;
import mullwright.drawing.Tone;
import mullwright.quantity.Length;
import mullwright.quantity.LengthFormat;
import mullwright.quantity.Step;
import mullwright.quantity.UnitSystem;

/**
 * One bar for the shop: seen from the front and, above, from the left (a vertical) or from above (a
 * horizontal), its datum at the left, with every hole measured from the datum and from the glass
 * face.
 *
 * <p>Places along the bar stand as running dimensions from the datum (ISO 129-1:2018, superimposed
 * running dimensioning, from memory). A letter tells what kind of hole is there. The origin of the
 * paper is the datum, in the middle of the front.
 */
public final class PieceDrawing implements Drawing {
  /** More places than these stand in a table as well. */
  static final int CROWDED = 16;

  private static final Pen FAR = new Pen(LineWeight.MEDIUM, LineType.DASHED, Tone.INK);

  /** A bar names as many lines of pieces; tickets name all. */
  private static final int MOST_LINES = 4;

  private static final double COLUMN = 75;
  private static final double BETWEEN = 12;
  private static final double PITCH = 4.4;

  private final Bar bar;
  private final Scale scale;
  private final UnitSystem units;
  private final BrokenAxis axis;
  private final Map<String, List<Bar.Hole>> kinds = new LinkedHashMap<>();
  private final double glass;
  private final Box extent;

  /**
   * The drawing of a bar.
   *
   * @param room its length may take on paper [mm]
   */
  public PieceDrawing(Bar bar, Scale scale, UnitSystem units, double room) {
    this.bar = bar;
    this.scale = scale;
    this.units = units;
    TreeSet<Double> places = new TreeSet<>(List.of(0.0, bar.length().toMillimetres()));
    bar.holes().forEach(hole -> places.add(hole.along().toMillimetres()));
    bar.notch()
        .ifPresent(
            notch -> {
              places.add(notch.along().toMillimetres());
              places.add(bar.length().minus(notch.along()).toMillimetres());
            });
    this.axis = new BrokenAxis(places.stream().mapToDouble(place -> place).toArray(), scale, room);
    bar.holes()
        .forEach(hole -> kinds.computeIfAbsent(kind(hole), any -> new ArrayList<>()).add(hole));
    this.glass = p(bar.face()) / 2 + BETWEEN;
    this.extent = Measuring.of(this);
  }

  private double p(Length length) {
    return scale.paper(length.toMillimetres());
  }

  private double along(Length place) {
    return axis.at(place.toMillimetres());
  }

  private double back(Length place) {
    return glass + p(place);
  }

  /** A place as tickets print it, to 1/32" or to 0.1 mm. */
  private String place(Length length) {
    return units == UnitSystem.US
        ? LengthFormat.feetIfAny(Step.THIRTY_SECOND).print(length)
        : millimetres(length);
  }

  /** A diameter or a depth, to 1/64" or to 0.1 mm. */
  private String small(Length length) {
    return units == UnitSystem.US
        ? LengthFormat.feetIfAny(Step.SIXTY_FOURTH).print(length)
        : millimetres(length);
  }

  // on a drawing without the unit
  private static String millimetres(Length length) {
    String text = LengthFormat.millimetres(Step.TENTH_MILLIMETRE).print(length);
    return text.substring(0, text.length() - " mm".length());
  }

  private String kind(Bar.Hole hole) {
    StringBuilder words = new StringBuilder();
    hole.diameter().ifPresent(by -> words.append("∅ ").append(small(by)).append(", "));
    words.append(hole.what());
    if (!hole.side().isEmpty()) {
      words.append(", ").append(hole.side());
    }
    if (!hole.fastener().isEmpty()) {
      words.append(", for ").append(hole.fastener());
    }
    return hole.placed() ? words.toString() : words + ": no hole pattern stated";
  }

  private String letter(Bar.Hole hole) {
    return letter(new ArrayList<>(kinds.keySet()).indexOf(kind(hole)));
  }

  private static String letter(int number) {
    return number < 26
        ? String.valueOf((char) ('A' + number))
        : letter(number / 26 - 1) + letter(number % 26);
  }

  @Override
  public String title() {
    return bar.mark();
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
    surface.beginLayer(Layer.MEMBER);
    surface.begin(
        new Subject(bar.kind(), Optional.empty(), bar.kind(), bar.mark(), Optional.empty()));
    front(surface);
    above(surface);
    surface.end();
    surface.endLayer();
    surface.beginLayer(Layer.HOLE);
    bar.holes().forEach(hole -> hole(surface, hole));
    surface.endLayer();
    surface.beginLayer(Layer.DIMENSION);
    running(surface);
    depths(surface);
    overall(surface);
    surface.endLayer();
    surface.beginLayer(Layer.NOTE);
    notes(surface);
    surface.endLayer();
  }

  // the first end may slant across the face
  private void front(Surface surface) {
    double half = p(bar.face()) / 2;
    // a vertical lies with its right side down, a horizontal with its upper side up
    int down = bar.upright() ? 1 : -1;
    double slant = down * p(bar.first());
    double other = down * p(bar.last());
    double end = axis.length();
    outline(
        surface,
        new double[] {
          Math.max(0, slant),
          -half,
          end + Math.min(0, other),
          -half,
          end - Math.max(0, other),
          half,
          Math.max(0, -slant),
          half
        });
  }

  private void above(Surface surface) {
    double front = back(bar.plane().minus(bar.depth()));
    double rear = back(bar.plane());
    double end = axis.length();
    if (bar.notch().isEmpty()) {
      outline(surface, new Box(0, front, end, rear).corners());
      return;
    }
    double in = along(bar.notch().get().along());
    double deep = front + p(bar.notch().get().back());
    outline(
        surface,
        new double[] {
          in, front, end - in, front, end - in, deep, end, deep, end, rear, 0, rear, 0, deep, in,
          deep
        });
  }

  private void outline(Surface surface, double[] points) {
    surface.polygon(points, Pen.EDGE, Tone.METAL);
    Box box = Box.of(points);
    for (double at : axis.breaks()) {
      crack(surface, at, box.bottom(), box.top());
    }
  }

  // a strip of paper between two zigzags (ISO 128-2, break lines of long parts)
  private static void crack(Surface surface, double x, double bottom, double top) {
    double half = 0.9;
    surface.box(new Box(x - half, bottom - 0.4, x + half, top + 0.4), null, Tone.PAPER);
    zigzag(surface, x - half, bottom, top);
    zigzag(surface, x + half, bottom, top);
  }

  private static void zigzag(Surface surface, double x, double bottom, double top) {
    double middle = (bottom + top) / 2;
    surface.polyline(
        new double[] {
          x,
          bottom - 1.2,
          x,
          middle - 1.4,
          x - 1,
          middle - 0.5,
          x + 1,
          middle + 0.5,
          x,
          middle + 1.4,
          x,
          top + 1.2
        },
        Pen.THIN);
  }

  private void hole(Surface surface, Bar.Hole hole) {
    double x = along(hole.along());
    double half = p(bar.face()) / 2;
    Length middle = bar.plane().minus(bar.depth().half());
    double y = back(hole.back().orElse(middle));
    double radius = Math.max(0.45, hole.diameter().map(this::p).orElse(0.0) / 2);
    double cross = radius + 0.9;
    boolean far = hole.side().equals("right");
    if (hole.placed()) {
      surface.circle(x, y, radius, far ? FAR : Pen.FINE_EDGE, far ? null : Tone.PAPER);
      surface.line(x - cross, y, x + cross, y, Pen.THIN);
      surface.line(x, y - cross, x, y + cross, Pen.THIN);
    } else {
      surface.line(x - 1, y - 1, x + 1, y + 1, Pen.THIN);
      surface.line(x - 1, y + 1, x + 1, y - 1, Pen.THIN);
    }
    double depth = Math.min(half, 2.2);
    if (!hole.side().equals("right")) {
      surface.line(x, half + 0.8, x, half - depth, Pen.THIN);
    }
    if (hole.side().equals("right")
        || hole.side().equals("through")
        || hole.side().equals("left and right")) {
      surface.line(x, -half - 0.8, x, -half + depth, Pen.THIN);
    }
  }

  private double lineOfPlaces() {
    return back(bar.plane()) + 5;
  }

  private void running(Surface surface) {
    Map<Length, TreeSet<String>> places = new TreeMap<>();
    places.put(bar.length(), new TreeSet<>());
    bar.holes()
        .forEach(
            hole -> places.computeIfAbsent(hole.along(), any -> new TreeSet<>()).add(letter(hole)));
    double[] wanted = places.keySet().stream().mapToDouble(this::along).toArray();
    double[] placed = Spread.of(wanted, PITCH);
    double y = lineOfPlaces();
    double rear = back(bar.plane());
    surface.circle(0, y, 0.9, Pen.FINE_EDGE, Tone.PAPER);
    surface.line(0, rear + 1, 0, y - 0.9, Pen.THIN);
    surface.line(0.9, y, axis.length(), y, Pen.THIN);
    surface.text("0", -1.8, y - Lettering.NOTE.height() / 2, Lettering.NOTE, Align.RIGHT);
    int at = 0;
    for (Map.Entry<Length, TreeSet<String>> each : places.entrySet()) {
      double x = wanted[at];
      double to = placed[at++];
      surface.polyline(new double[] {x, rear + 1, x, y + 1.2, to, y + 5, to, y + 6}, Pen.THIN);
      surface.line(x - 0.9, y - 0.9, x + 0.9, y + 0.9, Pen.EDGE);
      String letters = String.join(" ", each.getValue());
      String text = (place(each.getKey()) + "  " + letters).strip();
      surface.text(text, to + Lettering.NOTE.height() / 2, y + 7, 90, Lettering.NOTE, Align.LEFT);
    }
  }

  private void depths(Surface surface) {
    TreeSet<Length> backs = new TreeSet<>();
    bar.holes().forEach(hole -> hole.back().ifPresent(backs::add));
    double end = axis.length();
    double left = -6;
    surface.line(left, glass, end + 8, glass, Pen.CENTRE);
    surface.text("glass face", left - 1, glass - 1.2, Lettering.NOTE, Align.RIGHT);
    backs.remove(bar.plane());
    List<Length> all = new ArrayList<>(backs);
    all.add(bar.plane());
    double[] wanted = all.stream().mapToDouble(this::back).toArray();
    double[] placed = Spread.of(wanted, PITCH);
    double x = end + 6;
    surface.circle(x, glass, 0.9, Pen.FINE_EDGE, Tone.PAPER);
    surface.line(x, glass + 0.9, x, wanted[wanted.length - 1], Pen.THIN);
    for (int at = 0; at < placed.length; at++) {
      surface.polyline(
          new double[] {
            end + 1, wanted[at], x + 1, wanted[at], x + 3.5, placed[at], x + 4.5, placed[at]
          },
          Pen.THIN);
      surface.line(x - 0.9, wanted[at] - 0.9, x + 0.9, wanted[at] + 0.9, Pen.EDGE);
      surface.text(
          small(all.get(at)),
          x + 5.2,
          placed[at] - Lettering.NOTE.height() / 2,
          Lettering.NOTE,
          Align.LEFT);
    }
  }

  private void overall(Surface surface) {
    double half = p(bar.face()) / 2;
    DimensionString.level(
            -half - 8,
            -half,
            List.of(new DimensionString.Part(0, axis.length(), place(bar.length()))))
        .paint(surface);
    // too narrow for letters between its ends
    double x = -6;
    for (double end : new double[] {-half, half}) {
      surface.line(x - 1.6, end, -1, end, Pen.THIN);
      surface.line(x - 0.9, end - 0.9, x + 0.9, end + 0.9, Pen.EDGE);
    }
    surface.line(x, -half, x, half, Pen.THIN);
    surface.text(
        small(bar.face()), x - 2.4, -Lettering.NOTE.height() / 2, Lettering.NOTE, Align.RIGHT);
  }

  private void notes(Surface surface) {
    double y = -p(bar.face()) / 2 - 18;
    surface.text(bar.mark(), 0, y, Lettering.TITLE, Align.LEFT);
    double after = Lettering.TITLE.width(bar.mark()) + 4;
    String what =
        bar.pieces().size()
            + (bar.pieces().size() == 1 ? " piece, " : " pieces, ")
            + bar.kind()
            + " of "
            + bar.profile()
            + ", ends "
            + bar.ends()
            + (bar.finish().isEmpty() ? "" : ", " + bar.finish());
    surface.text(what, after, y, Lettering.NOTE, Align.LEFT);
    surface.line(0, y - 2, after + Lettering.NOTE.width(what), y - 2, Pen.CUT);
    y -= 6.5;
    List<String> lines = new ArrayList<>();
    lines.addAll(named(Math.max(150, axis.length())));
    bar.notch()
        .ifPresent(
            notch ->
                lines.add(
                    "Notched at both ends, "
                        + small(notch.along())
                        + " along, "
                        + small(notch.back())
                        + " back."));
    lines.add(
        "Scale "
            + scale.words()
            + (axis.breaks().isEmpty() ? "" : ", broken where nothing is drilled")
            + "; above seen from "
            + (bar.upright()
                ? "the left; datum is the lower end."
                : "above; datum is the left end."));
    for (String line : lines) {
      surface.text(line, 0, y, Lettering.NOTE, Align.LEFT);
      y -= Lettering.NOTE.height() * Lettering.LINE_PITCH;
    }
    int number = 0;
    for (Map.Entry<String, List<Bar.Hole>> kind : kinds.entrySet()) {
      int count = kind.getValue().stream().mapToInt(Bar.Hole::count).sum();
      surface.text(letter(number++), 0, y, Lettering.NOTE, Align.LEFT);
      surface.text(
          (count == 0 ? "" : count + " × ") + kind.getKey(), 6, y, Lettering.NOTE, Align.LEFT);
      y -= Lettering.NOTE.height() * Lettering.LINE_PITCH;
    }
    table(surface, y - 1);
  }

  private List<String> named(double width) {
    List<String> lines = Paragraph.lines(String.join("; ", bar.pieces()), Lettering.NOTE, width);
    if (lines.size() <= MOST_LINES) {
      return lines;
    }
    List<String> some = new ArrayList<>(lines.subList(0, MOST_LINES));
    some.add("… and others of that mark: see the tickets.");
    return some;
  }

  private void table(Surface surface, double top) {
    TreeMap<Length, List<Bar.Hole>> places = new TreeMap<>();
    bar.holes()
        .forEach(hole -> places.computeIfAbsent(hole.along(), any -> new ArrayList<>()).add(hole));
    if (places.size() <= CROWDED) {
      return;
    }
    double pitch = Lettering.NOTE.height() * Lettering.LINE_PITCH;
    int columns = Math.max(1, (int) (Math.max(150, axis.length()) / COLUMN));
    int rows = (places.size() + columns - 1) / columns;
    int at = 0;
    for (Map.Entry<Length, List<Bar.Hole>> each : places.entrySet()) {
      double x = at / rows * COLUMN;
      double y = top - at % rows * pitch;
      String backs =
          each.getValue().stream()
              .flatMap(hole -> hole.back().stream())
              .distinct()
              .map(this::small)
              .collect(Collectors.joining(", "));
      String letters =
          each.getValue().stream().map(this::letter).distinct().collect(Collectors.joining(" "));
      surface.text(place(each.getKey()), x + 22, y, Lettering.NOTE, Align.RIGHT);
      surface.text(letters, x + 25, y, Lettering.NOTE, Align.LEFT);
      surface.text(backs.isEmpty() ? "" : "back " + backs, x + 33, y, Lettering.NOTE, Align.LEFT);
      at++;
    }
  }
}
