package mullwright.drawing.dxf;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import mullwright.drawing.Align;
import mullwright.drawing.Box;
import mullwright.drawing.Hatch;
import mullwright.drawing.HatchLines;
import mullwright.drawing.Layer;
import mullwright.drawing.Lettering;
import mullwright.drawing.LineType;
import mullwright.drawing.Pen;
import mullwright.drawing.Subject;
import mullwright.drawing.Surface;
import mullwright.drawing.Symbol;
import mullwright.drawing.Tone;

/** Writes entities as they are painted. */
final class DxfSurface implements Surface {
  /** How much narrower than usual letters stand. */
  static final double NARROW = 0.8;

  private final double unit;
  private final Tags entities = new Tags();
  private final Tags blocks = new Tags();
  private final Set<Symbol> known = new HashSet<>();
  private Tags out = entities;
  private String layer = "0";

  /** On paper so many of the drawing's units to the millimetre. */
  DxfSurface(double unit) {
    this.unit = unit;
  }

  Tags entities() {
    return entities;
  }

  Tags blocks() {
    return blocks;
  }

  @Override
  public void beginLayer(Layer next) {
    layer = next.name();
  }

  @Override
  public void endLayer() {
    layer = "0";
  }

  @Override
  public void begin(Subject subject) {}

  @Override
  public void end() {}

  private Tags entity(String name, Pen pen) {
    out.text(0, name).text(8, layer);
    if (pen != null && pen.type() != LineType.CONTINUOUS) {
      out.text(6, Dxf.name(pen.type()));
    }
    return out;
  }

  @Override
  public void line(double x1, double y1, double x2, double y2, Pen pen) {
    entity("LINE", pen).point(0, x1 * unit, y1 * unit).point(1, x2 * unit, y2 * unit);
  }

  @Override
  public void polyline(double[] points, Pen pen) {
    vertices(points, pen, 0);
  }

  @Override
  public void polygon(double[] points, Pen pen, Tone fill) {
    if ((fill == Tone.INK || fill == Tone.FINDING) && points.length <= 8) {
      solid(points);
    }
    if (pen != null) {
      vertices(points, pen, 1);
    }
  }

  // the format wants the third and the fourth corner the other way round
  private void solid(double[] points) {
    int last = points.length - 2;
    entity("SOLID", null)
        .point(0, points[0] * unit, points[1] * unit)
        .point(1, points[2] * unit, points[3] * unit)
        .point(2, points[last] * unit, points[last + 1] * unit)
        .point(3, points[4] * unit, points[5] * unit);
  }

  private void vertices(double[] points, Pen pen, int closed) {
    if (out == blocks) {
      // readers lose the end of a polyline that stands in a block
      for (int at = 2; at < points.length + 2 * closed; at += 2) {
        int to = at % points.length;
        line(points[at - 2], points[at - 1], points[to], points[to + 1], pen);
      }
      return;
    }
    entity("POLYLINE", pen).whole(66, 1).point(0, 0, 0).whole(70, closed);
    for (int at = 0; at < points.length; at += 2) {
      out.text(0, "VERTEX").text(8, layer).point(0, points[at] * unit, points[at + 1] * unit);
    }
    out.text(0, "SEQEND").text(8, layer);
  }

  @Override
  public void circle(double x, double y, double radius, Pen pen, Tone fill) {
    entity("CIRCLE", pen).point(0, x * unit, y * unit).number(40, radius * unit);
  }

  @Override
  public void arc(double x, double y, double radius, double start, double sweep, Pen pen) {
    double from = sweep < 0 ? start + sweep : start;
    entity("ARC", pen)
        .point(0, x * unit, y * unit)
        .number(40, radius * unit)
        .number(50, (from % 360 + 360) % 360)
        .number(51, ((from + Math.abs(sweep)) % 360 + 360) % 360);
  }

  @Override
  public void hatch(double[] polygon, Hatch hatch, List<Box> clear) {
    for (double[] line : HatchLines.of(polygon, hatch, clear)) {
      line(line[0], line[1], line[2], line[3], hatch.pen());
    }
  }

  @Override
  public void text(
      String text, double x, double y, double angle, Lettering lettering, Align align) {
    String words = DxfText.of(text);
    if (words.isBlank()) {
      return;
    }
    double back = lettering.width(text) * align.share();
    double turn = Math.toRadians(angle);
    entity("TEXT", null)
        .point(0, (x - back * Math.cos(turn)) * unit, (y - back * Math.sin(turn)) * unit)
        .number(40, lettering.height() * unit)
        .text(1, words)
        .number(50, angle)
        .number(41, NARROW)
        .text(7, "STANDARD");
    if (align != Align.LEFT) {
      out.whole(72, align == Align.CENTRE ? 1 : 2).point(1, x * unit, y * unit);
    }
  }

  @Override
  public void symbol(Symbol symbol, double x, double y) {
    String name = symbol.name().toUpperCase(Locale.ROOT);
    if (known.add(symbol)) {
      block(symbol, name);
    }
    entity("INSERT", null).text(2, name).point(0, x * unit, y * unit);
  }

  // on layer 0, so that it takes the layer of where it is put
  private void block(Symbol symbol, String name) {
    String before = layer;
    layer = "0";
    out = blocks;
    out.text(0, "BLOCK").text(8, "0").text(2, name).whole(70, 0).point(0, 0, 0).text(3, name);
    symbol.paint().accept(this);
    out.text(0, "ENDBLK").text(8, "0");
    out = entities;
    layer = before;
  }
}
