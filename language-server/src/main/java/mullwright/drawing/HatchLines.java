package mullwright.drawing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Cuts the lines of a hatch at the edges of its area, for forms that know no hatches. */
public final class HatchLines {
  private HatchLines() {}

  /**
   * The lines within a polygon and outside some boxes.
   *
   * @param polygon x and y of its corners in turn; it may not be convex
   * @param clear boxes that are kept free of lines
   * @return for each line its ends x1, y1, x2, y2
   */
  public static List<double[]> of(double[] polygon, Hatch hatch, List<Box> clear) {
    List<double[]> lines = new ArrayList<>();
    for (Hatch.Set set : hatch.sets()) {
      add(polygon, set, clear, lines);
    }
    return lines;
  }

  // x along the lines, y square to them
  private static void add(double[] polygon, Hatch.Set set, List<Box> clear, List<double[]> lines) {
    double cos = Math.cos(Math.toRadians(set.angle()));
    double sin = Math.sin(Math.toRadians(set.angle()));
    List<double[]> rings = new ArrayList<>();
    rings.add(turned(polygon, cos, -sin));
    clear.forEach(box -> rings.add(turned(box.corners(), cos, -sin)));
    Box reach = Box.of(rings.get(0));
    double first = phase(set);
    long from = (long) Math.ceil((reach.bottom() - first) / set.spacing());
    long to = (long) Math.floor((reach.top() - first) / set.spacing());
    for (long i = from; i <= to; i++) {
      double y = first + i * set.spacing();
      double[] ends = crossings(rings, y);
      for (int at = 0; at + 1 < ends.length; at += 2) {
        if (ends[at + 1] - ends[at] > 1e-6) {
          double[] one = turned(new double[] {ends[at], y, ends[at + 1], y}, cos, sin);
          lines.add(one);
        }
      }
    }
  }

  /** Where the first line of a set lies, square to it: half a spacing in. */
  static double phase(Hatch.Set set) {
    return set.spacing() / 2 + set.shift();
  }

  private static double[] turned(double[] points, double cos, double sin) {
    double[] out = new double[points.length];
    for (int at = 0; at < points.length; at += 2) {
      out[at] = points[at] * cos - points[at + 1] * sin;
      out[at + 1] = points[at] * sin + points[at + 1] * cos;
    }
    return out;
  }

  // a box to be kept clear lies within the polygon: odd and even do the rest
  private static double[] crossings(List<double[]> rings, double y) {
    double[] found = new double[16];
    int count = 0;
    for (double[] ring : rings) {
      for (int at = 0; at < ring.length; at += 2) {
        int next = (at + 2) % ring.length;
        double y1 = ring[at + 1];
        double y2 = ring[next + 1];
        if (y1 <= y != y2 <= y) {
          if (count == found.length) {
            found = Arrays.copyOf(found, 2 * count);
          }
          found[count++] = ring[at] + (y - y1) / (y2 - y1) * (ring[next] - ring[at]);
        }
      }
    }
    double[] ends = Arrays.copyOf(found, count);
    Arrays.sort(ends);
    return ends;
  }
}
