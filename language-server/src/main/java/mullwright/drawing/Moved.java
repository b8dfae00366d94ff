package mullwright.drawing;

import java.util.List;

/** A surface that puts what is painted somewhere else on another. */
public record Moved(Surface surface, double dx, double dy) implements Surface {
  private double[] moved(double[] points) {
    double[] out = new double[points.length];
    for (int at = 0; at < points.length; at += 2) {
      out[at] = points[at] + dx;
      out[at + 1] = points[at + 1] + dy;
    }
    return out;
  }

  @Override
  public void beginLayer(Layer layer) {
    surface.beginLayer(layer);
  }

  @Override
  public void endLayer() {
    surface.endLayer();
  }

  @Override
  public void begin(Subject subject) {
    surface.begin(subject);
  }

  @Override
  public void end() {
    surface.end();
  }

  @Override
  public void line(double x1, double y1, double x2, double y2, Pen pen) {
    surface.line(x1 + dx, y1 + dy, x2 + dx, y2 + dy, pen);
  }

  @Override
  public void polyline(double[] points, Pen pen) {
    surface.polyline(moved(points), pen);
  }

  @Override
  public void polygon(double[] points, Pen pen, Tone fill) {
    surface.polygon(moved(points), pen, fill);
  }

  @Override
  public void circle(double x, double y, double radius, Pen pen, Tone fill) {
    surface.circle(x + dx, y + dy, radius, pen, fill);
  }

  @Override
  public void arc(double x, double y, double radius, double start, double sweep, Pen pen) {
    surface.arc(x + dx, y + dy, radius, start, sweep, pen);
  }

  @Override
  public void hatch(double[] polygon, Hatch hatch, List<Box> clear) {
    surface.hatch(moved(polygon), hatch, clear.stream().map(box -> box.moved(dx, dy)).toList());
  }

  @Override
  public void text(
      String text, double x, double y, double angle, Lettering lettering, Align align) {
    surface.text(text, x + dx, y + dy, angle, lettering, align);
  }

  @Override
  public void symbol(Symbol symbol, double x, double y) {
    surface.symbol(symbol, x + dx, y + dy);
  }
}
