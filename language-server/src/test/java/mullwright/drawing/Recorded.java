package mullwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** A surface that keeps what is painted, for tests to look at. */
public final class Recorded implements Surface {
  public record Text(
      Layer layer, String text, double x, double y, double angle, Lettering lettering, Box box) {}

  public record Area(Layer layer, Subject subject, double[] points, Pen pen, Tone fill) {}

  public record Line(Layer layer, double x1, double y1, double x2, double y2, Pen pen) {}

  public record Sign(Layer layer, Subject subject, Symbol symbol, double x, double y) {}

  public record Hatched(Subject subject, double[] points, Hatch hatch, List<Box> clear) {}

  public final List<Text> texts = new ArrayList<>();
  public final List<Area> areas = new ArrayList<>();
  public final List<Line> lines = new ArrayList<>();
  public final List<Sign> signs = new ArrayList<>();
  public final List<Hatched> hatched = new ArrayList<>();
  public final java.util.Set<mullwright.layout.PieceRef> pieces = new java.util.HashSet<>();
  private Layer layer;
  private final List<Subject> subjects = new ArrayList<>();

  public static Recorded of(Drawing drawing) {
    Recorded recorded = new Recorded();
    drawing.paint(recorded);
    if (recorded.layer != null || !recorded.subjects.isEmpty()) {
      throw new AssertionError("a layer or a subject was left open");
    }
    return recorded;
  }

  private Subject subject() {
    return subjects.isEmpty() ? null : subjects.get(subjects.size() - 1);
  }

  @Override
  public void beginLayer(Layer next) {
    if (layer != null) {
      throw new AssertionError(next + " begins in " + layer);
    }
    layer = next;
  }

  @Override
  public void endLayer() {
    layer = null;
  }

  @Override
  public void begin(Subject subject) {
    subjects.add(subject);
    subject.piece().ifPresent(pieces::add);
  }

  @Override
  public void end() {
    subjects.remove(subjects.size() - 1);
  }

  @Override
  public void line(double x1, double y1, double x2, double y2, Pen pen) {
    lines.add(new Line(layer, x1, y1, x2, y2, pen));
  }

  @Override
  public void polyline(double[] points, Pen pen) {
    for (int at = 2; at < points.length; at += 2) {
      line(points[at - 2], points[at - 1], points[at], points[at + 1], pen);
    }
  }

  @Override
  public void polygon(double[] points, Pen pen, Tone fill) {
    areas.add(new Area(layer, subject(), points, pen, fill));
  }

  @Override
  public void circle(double x, double y, double radius, Pen pen, Tone fill) {
    areas.add(
        new Area(layer, subject(), Box.around(x, y, 2 * radius, 2 * radius).corners(), pen, fill));
  }

  @Override
  public void arc(double x, double y, double radius, double start, double sweep, Pen pen) {}

  @Override
  public void hatch(double[] polygon, Hatch hatch, List<Box> clear) {
    hatched.add(new Hatched(subject(), polygon, hatch, List.copyOf(clear)));
  }

  @Override
  public void text(
      String text, double x, double y, double angle, Lettering lettering, Align align) {
    Box box = TextBox.of(text, x, y, angle, lettering, align);
    texts.add(new Text(layer, text, x, y, angle, lettering, box));
  }

  @Override
  public void symbol(Symbol symbol, double x, double y) {
    signs.add(new Sign(layer, subject(), symbol, x, y));
  }
}
