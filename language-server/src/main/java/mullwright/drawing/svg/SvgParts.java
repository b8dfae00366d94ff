package mullwright.drawing.svg;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.drawing.Box;
import mullwright.drawing.Drawing;
import mullwright.drawing.Layer;
import mullwright.drawing.Subject;

/**
 * A drawing for a page, cut into parts that can be put anew one by one.
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
   * @param markup elements
   */
  public record Part(Layer layer, String key, String markup) {}

  /**
   * Paints.
   *
   * @param id begins the names of its hatches and symbols, which must differ on one page
   */
  public static SvgParts of(Drawing drawing, String id) {
    Cutter cutter = new Cutter(id);
    drawing.paint(cutter);
    StringBuilder style = new StringBuilder();
    new SvgStyle(Svg.Colours.PAGE).write(cutter.used(), style);
    StringBuilder definitions = new StringBuilder();
    cutter.content(definitions);
    return new SvgParts(drawing.extent(), style.toString(), definitions.toString(), cutter.parts);
  }

  /** Cuts what is painted where an outermost subject begins or ends. */
  private static final class Cutter extends SvgSurface {
    private final List<Part> parts = new ArrayList<>();
    private final Map<String, Integer> keys = new HashMap<>();
    private Layer layer;
    private String key = "";
    private int depth;

    Cutter(String id) {
      super(id);
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
        key = key(subject);
      }
      depth++;
      super.begin(subject);
    }

    @Override
    public void end() {
      super.end();
      depth--;
      if (depth == 0) {
        cut();
      }
    }

    private static String key(Subject subject) {
      return Optional.of(subject)
          .flatMap(Subject::piece)
          .map(piece -> SvgWords.of(piece.kind()) + "-" + piece.index())
          .orElse(subject.kind() + " " + subject.name());
    }

    private void cut() {
      if (body().length() > 0) {
        String whole = layer.word() + "/" + key;
        int before = keys.merge(whole, 1, Integer::sum) - 1;
        parts.add(new Part(layer, before == 0 ? whole : whole + "/" + before, body().toString()));
        body().setLength(0);
      }
      key = "";
    }
  }
}
