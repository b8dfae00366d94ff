package mullwright.drawing.svg;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mullwright.drawing.Align;
import mullwright.drawing.Box;
import mullwright.drawing.Hatch;
import mullwright.drawing.Layer;
import mullwright.drawing.Lettering;
import mullwright.drawing.Pen;
import mullwright.drawing.Subject;
import mullwright.drawing.Surface;
import mullwright.drawing.Symbol;
import mullwright.drawing.Tone;

/** Writes elements as they are painted. */
class SvgSurface implements Surface {
  private final String id;
  private final StringBuilder body = new StringBuilder(1 << 16);
  private final SvgStyle.Used used = new SvgStyle.Used();
  private final SvgHatches hatches;
  private final Map<Symbol, String> symbols = new LinkedHashMap<>();
  private StringBuilder out = body;
  private int opened;

  SvgSurface(String id) {
    this.id = id;
    this.hatches = new SvgHatches(id);
  }

  StringBuilder body() {
    return body;
  }

  SvgStyle.Used used() {
    return used;
  }

  /** How many elements began since last told to forget, those in symbols left out. */
  int opened() {
    return opened;
  }

  void forgetOpened() {
    opened = 0;
  }

  /** An element begins. */
  void open(String tag) {
    opened++;
    out.append('<').append(tag);
  }

  /** What follows goes elsewhere: an element that is still being written ends. */
  void rest() {}

  void definitions(StringBuilder to) {
    if (hatches.none() && symbols.isEmpty()) {
      return;
    }
    to.append("<defs>\n");
    content(to);
    to.append("</defs>\n");
  }

  /** What stands in the definitions. */
  void content(StringBuilder to) {
    hatches.write(to);
    symbols.forEach(
        (symbol, drawn) ->
            to.append("<g id=\"")
                .append(id)
                .append("-s-")
                .append(symbol.name())
                .append("\">\n")
                .append(drawn)
                .append("</g>\n"));
  }

  @Override
  public void beginLayer(Layer layer) {
    out.append("<g class=\"layer layer-").append(layer.word()).append("\">\n");
  }

  @Override
  public void endLayer() {
    out.append("</g>\n");
  }

  @Override
  public void begin(Subject subject) {
    open("g");
    out.append(" class=\"subject ").append(subject.kind()).append('"');
    subject
        .piece()
        .ifPresent(
            piece -> {
              out.append(" data-piece=\"").append(piece.kind().word()).append('-');
              out.append(piece.index()).append('"');
            });
    if (!subject.mark().isEmpty()) {
      attribute("data-mark", subject.mark());
    }
    subject
        .place()
        .ifPresent(
            place -> {
              attribute("data-file", place.file());
              out.append(" data-start=\"").append(place.start());
              out.append("\" data-end=\"").append(place.end()).append('"');
            });
    out.append('>');
    if (!subject.name().isEmpty()) {
      out.append("<title>");
      Escaped.append(subject.name(), out);
      out.append("</title>");
    }
    out.append('\n');
  }

  private void attribute(String name, String value) {
    out.append(' ').append(name).append("=\"");
    Escaped.append(value, out);
    out.append('"');
  }

  @Override
  public void end() {
    out.append("</g>\n");
  }

  void number(String before, double value) {
    out.append(before);
    Numbers.append(value, out);
  }

  void look(Pen pen, Tone fill) {
    out.append(" class=\"");
    if (pen != null) {
      String name = SvgStyle.of(pen);
      used.pens.putIfAbsent(name, pen);
      out.append(name);
    }
    if (fill != null) {
      used.tones.add(fill);
      out.append(pen == null ? "" : " ").append(SvgStyle.of(fill));
    }
    out.append('"');
  }

  @Override
  public void line(double x1, double y1, double x2, double y2, Pen pen) {
    open("line");
    look(pen, null);
    number(" x1=\"", x1);
    number("\" y1=\"", -y1);
    number("\" x2=\"", x2);
    number("\" y2=\"", -y2);
    out.append("\"/>\n");
  }

  @Override
  public void polyline(double[] points, Pen pen) {
    open("polyline");
    look(pen, null);
    points(points);
  }

  @Override
  public void polygon(double[] points, Pen pen, Tone fill) {
    open("polygon");
    look(pen, fill);
    points(points);
  }

  private void points(double[] points) {
    out.append(" points=\"");
    for (int at = 0; at < points.length; at += 2) {
      number(at == 0 ? "" : " ", points[at]);
      number(",", -points[at + 1]);
    }
    out.append("\"/>\n");
  }

  @Override
  public void circle(double x, double y, double radius, Pen pen, Tone fill) {
    open("circle");
    look(pen, fill);
    number(" cx=\"", x);
    number("\" cy=\"", -y);
    number("\" r=\"", radius);
    out.append("\"/>\n");
  }

  @Override
  public void arc(double x, double y, double radius, double start, double sweep, Pen pen) {
    double from = Math.toRadians(start);
    double to = Math.toRadians(start + sweep);
    open("path");
    look(pen, null);
    number(" d=\"M", x + radius * Math.cos(from));
    number(" ", -y - radius * Math.sin(from));
    number("A", radius);
    number(" ", radius);
    out.append(" 0 ").append(Math.abs(sweep) > 180 ? 1 : 0).append(sweep > 0 ? " 0" : " 1");
    number(" ", x + radius * Math.cos(to));
    number(" ", -y - radius * Math.sin(to));
    out.append("\"/>\n");
  }

  @Override
  public void hatch(double[] polygon, Hatch hatch, List<Box> clear) {
    used.pens.putIfAbsent(SvgStyle.of(hatch.pen()), hatch.pen());
    for (int set = 0; set < hatch.sets().size(); set++) {
      open("path");
      out.append(" class=\"hatch\" fill=\"url(#").append(hatches.use(hatch, set));
      out.append(")\" fill-rule=\"evenodd\" d=\"");
      ring(polygon);
      clear.forEach(box -> ring(box.corners()));
      out.append("\"/>\n");
    }
  }

  private void ring(double[] points) {
    for (int at = 0; at < points.length; at += 2) {
      number(at == 0 ? "M" : "L", points[at]);
      number(" ", -points[at + 1]);
    }
    out.append('Z');
  }

  @Override
  public void text(
      String text, double x, double y, double angle, Lettering lettering, Align align) {
    String name = SvgStyle.of(lettering);
    used.letterings.putIfAbsent(name, lettering);
    open("text");
    out.append(" class=\"").append(name);
    out.append(align == Align.LEFT ? "\"" : align == Align.CENTRE ? " d-c\"" : " d-r\"");
    number(" x=\"", x);
    number("\" y=\"", -y);
    if (angle != 0) {
      number("\" transform=\"rotate(", -angle);
      number(" ", x);
      number(" ", -y);
      out.append(')');
    }
    // whatever font a reader has, the line is as long as the drawing counts on
    number("\" textLength=\"", lettering.width(text));
    out.append("\" lengthAdjust=\"spacingAndGlyphs\">");
    Escaped.append(text, out);
    out.append("</text>\n");
  }

  @Override
  public void symbol(Symbol symbol, double x, double y) {
    if (!symbols.containsKey(symbol)) {
      define(symbol);
    }
    open("use");
    out.append(" href=\"#").append(id).append("-s-").append(symbol.name());
    number("\" x=\"", x);
    number("\" y=\"", -y);
    out.append("\"/>\n");
  }

  private void define(Symbol symbol) {
    rest();
    StringBuilder before = out;
    int openedBefore = opened;
    out = new StringBuilder();
    symbol.paint().accept(this);
    rest();
    symbols.put(symbol, out.toString());
    out = before;
    opened = openedBefore;
  }

  /** Writes on where writing is. */
  StringBuilder out() {
    return out;
  }
}
