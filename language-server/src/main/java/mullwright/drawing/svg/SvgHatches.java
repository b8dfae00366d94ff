package mullwright.drawing.svg;

import java.util.LinkedHashMap;
import java.util.Map;
import mullwright.drawing.Hatch;

/** Keeps each set of lines of a hatch as a pattern. */
final class SvgHatches {
  private record Lines(Hatch hatch, int set) {}

  private final String id;
  private final Map<String, Lines> patterns = new LinkedHashMap<>();

  SvgHatches(String id) {
    this.id = id;
  }

  boolean none() {
    return patterns.isEmpty();
  }

  /** The name of the pattern of a set. */
  String use(Hatch hatch, int set) {
    String name = id + "-h-" + hatch.name() + (set == 0 ? "" : "-" + set);
    patterns.putIfAbsent(name, new Lines(hatch, set));
    return name;
  }

  void write(StringBuilder out) {
    patterns.forEach((name, lines) -> write(name, lines, out));
  }

  // one line along x in the middle of a square tile, the tiles turned; y runs down here
  private static void write(String name, Lines lines, StringBuilder out) {
    Hatch.Set set = lines.hatch().sets().get(lines.set());
    out.append("<pattern id=\"").append(name).append("\" patternUnits=\"userSpaceOnUse\" width=\"");
    Numbers.append(set.spacing(), out);
    out.append("\" height=\"");
    Numbers.append(set.spacing(), out);
    out.append("\" patternTransform=\"rotate(");
    Numbers.append(-set.angle(), out);
    out.append(") translate(0 ");
    Numbers.append(-set.shift(), out);
    out.append(")\"><path class=\"").append(SvgStyle.of(lines.hatch().pen())).append("\" d=\"M0 ");
    Numbers.append(set.spacing() / 2, out);
    out.append('H');
    Numbers.append(set.spacing(), out);
    out.append("\"/></pattern>\n");
  }
}
