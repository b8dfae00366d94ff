package mullwright.drawing.svg;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.drawing.Box;
import mullwright.drawing.Drawing;
import mullwright.drawing.Layer;
import mullwright.drawing.Pen;
import mullwright.drawing.Subject;

/**
 * A drawing for a page, cut into parts that can be put anew one by one.
 *
 * <p>Made of as few elements as show the same, for a browser's work grows with their number: lines
 * of one pen that follow each other are one path, and a part that is a single element has no group
 * round it.
 *
 * @param box the room it takes, y up; on the page y runs down
 * @param style its style sheet, for elements within one of class {@code drawing}; colours as {@link
 *     Svg.Colours#PAGE} says
 * @param definitions its hatches and symbols
 * @param parts in the order they are painted
 */
public record SvgParts(Box box, String style, String definitions, List<Part> parts) {
  public SvgParts {
    parts = List.copyOf(parts);
  }

  /**
   * What shows one subject, or stands between two of them.
   *
   * @param key the same from one painting to the next as long as it shows the same
   * @param markup one element
   */
  public record Part(String key, String markup) {}

  /** What a page says of a part, beside what it looks like. */
  @FunctionalInterface
  public interface Attributes {
    /**
     * Writes attributes, each after a space.
     *
     * @param subject that the part shows; empty for what stands between subjects
     */
    void write(Layer layer, Optional<Subject> subject, StringBuilder out);
  }

  /**
   * Paints.
   *
   * @param id begins the names of its hatches and symbols, which must differ on one page
   */
  public static SvgParts of(Drawing drawing, String id, Attributes attributes) {
    Cutter cutter = new Cutter(id, attributes);
    drawing.paint(cutter);
    StringBuilder style = new StringBuilder();
    new SvgStyle(Svg.Colours.PAGE).write(cutter.used(), style);
    StringBuilder definitions = new StringBuilder();
    cutter.content(definitions);
    return new SvgParts(drawing.extent(), style.toString(), definitions.toString(), cutter.parts);
  }

  /** Cuts what is painted where an outermost subject begins or ends. */
  private static final class Cutter extends SvgSurface {
    private final Attributes attributes;
    private final List<Part> parts = new ArrayList<>();
    private final Map<String, Integer> keys = new HashMap<>();
    private Layer layer;
    private Optional<Subject> shown = Optional.empty();
    private int depth;
    private Pen joining;

    Cutter(String id, Attributes attributes) {
      super(id);
      this.attributes = attributes;
    }

    @Override
    public void beginLayer(Layer begun) {
      cut();
      layer = begun;
    }

    @Override
    public void endLayer() {
      cut();
    }

    @Override
    public void begin(Subject subject) {
      if (depth == 0) {
        cut();
        shown = Optional.of(subject);
      } else {
        super.begin(subject);
      }
      depth++;
    }

    @Override
    public void end() {
      depth--;
      if (depth == 0) {
        cut();
      } else {
        rest();
        super.end();
      }
    }

    @Override
    public void line(double x1, double y1, double x2, double y2, Pen pen) {
      if (!pen.equals(joining)) {
        open("path");
        look(pen, null);
        out().append(" d=\"");
        joining = pen;
      }
      number("M", x1);
      number(" ", -y1);
      number("L", x2);
      number(" ", -y2);
    }

    @Override
    void open(String tag) {
      rest();
      super.open(tag);
    }

    @Override
    void rest() {
      if (joining != null) {
        out().append("\"/>\n");
        joining = null;
      }
    }

    private void cut() {
      rest();
      if (body().length() > 0) {
        parts.add(new Part(key(), markup()));
        body().setLength(0);
        forgetOpened();
      }
      shown = Optional.empty();
    }

    private String key() {
      String name =
          shown
              .map(
                  subject ->
                      subject
                          .piece()
                          .map(piece -> piece.word())
                          .orElseGet(() -> subject.kind() + " " + subject.name()))
              .orElse("");
      String whole = layer.word() + "/" + name;
      int before = keys.merge(whole, 1, Integer::sum) - 1;
      return before == 0 ? whole : whole + "/" + before;
    }

    private String markup() {
      StringBuilder said = new StringBuilder(160);
      if (opened() == 1) {
        int afterTag = body().indexOf(" ");
        said.append(body(), 0, afterTag);
        attributes.write(layer, shown, said);
        withoutBreaks(afterTag, said);
        return said.toString();
      }
      said.append("<g");
      attributes.write(layer, shown, said);
      said.append('>');
      withoutBreaks(0, said);
      return said.append("</g>").toString();
    }

    // line breaks are for those who read a file; a page would keep each
    private void withoutBreaks(int from, StringBuilder to) {
      int start = from;
      while (start < body().length()) {
        int end = body().indexOf("\n", start);
        int stop = end < 0 ? body().length() : end;
        to.append(body(), start, stop);
        start = stop + 1;
      }
    }
  }
}
