package mullwright.drawing;

import java.util.List;

/** A surface that keeps nothing but how far the drawing reaches. */
public final class Measuring implements Surface {
  private Box reach = Box.NOTHING;
  private double dx;
  private double dy;

  /** The paper a drawing takes. */
  public static Box of(Drawing drawing) {
    Measuring measuring = new Measuring();
    drawing.paint(measuring);
    return measuring.reach;
  }

  /** What was painted so far reaches so far; widths of lines left out. */
  public Box reach() {
    return reach;
  }

  private void take(double x, double y) {
    reach = reach.with(x + dx, y + dy);
  }

  private void takeAll(double[] points) {
    for (int at = 0; at < points.length; at += 2) {
      take(points[at], points[at + 1]);
    }
  }

  @Override
  public void beginLayer(Layer layer) {}

  @Override
  public void endLayer() {}

  @Override
  public void begin(Subject subject) {}

  @Override
  public void end() {}

  @Override
  public void line(double x1, double y1, double x2, double y2, Pen pen) {
    take(x1, y1);
    take(x2, y2);
  }

  @Override
  public void polyline(double[] points, Pen pen) {
    takeAll(points);
  }

  @Override
  public void polygon(double[] points, Pen pen, Tone fill) {
    takeAll(points);
  }

  @Override
  public void circle(double x, double y, double radius, Pen pen, Tone fill) {
    take(x - radius, y - radius);
    take(x + radius, y + radius);
  }

  @Override
  public void arc(double x, double y, double radius, double start, double sweep, Pen pen) {
    circle(x, y, radius, pen, null);
  }

  @Override
  public void hatch(double[] polygon, Hatch hatch, List<Box> clear) {
    takeAll(polygon);
  }

  @Override
  public void text(
      String text, double x, double y, double angle, Lettering lettering, Align align) {
    takeAll(TextBox.corners(text, x, y, angle, lettering, align));
  }

  @Override
  public void symbol(Symbol symbol, double x, double y) {
    dx += x;
    dy += y;
    symbol.paint().accept(this);
    dx -= x;
    dy -= y;
  }
}
