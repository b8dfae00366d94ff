package mullwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Cuts polygons and lines at boxes. */
public final class Clip {
  private Clip() {}

  /** What of a convex polygon lies in a box; no points if nothing does. */
  public static double[] polygon(double[] points, Box box) {
    if (box.holds(Box.of(points))) {
      return points;
    }
    double[] cut = half(points, 0, box.left(), 1);
    cut = half(cut, 0, box.right(), -1);
    cut = half(cut, 1, box.bottom(), 1);
    cut = half(cut, 1, box.top(), -1);
    return cut.length < 6 ? new double[0] : cut;
  }

  // what lies on one side of an upright (axis 0) or level (axis 1) line
  private static double[] half(double[] points, int axis, double limit, int sign) {
    double[] out = new double[2 * points.length + 2];
    int count = 0;
    for (int at = 0; at < points.length; at += 2) {
      int next = (at + 2) % points.length;
      double a = sign * (points[at + axis] - limit);
      double b = sign * (points[next + axis] - limit);
      if (a >= 0) {
        out[count++] = points[at];
        out[count++] = points[at + 1];
      }
      if (a >= 0 != b >= 0) {
        double t = a / (a - b);
        out[count++] = points[at] + t * (points[next] - points[at]);
        out[count++] = points[at + 1] + t * (points[next + 1] - points[at + 1]);
      }
    }
    return java.util.Arrays.copyOf(out, count);
  }

  /**
   * What is left of a stretch once others are taken out.
   *
   * @param without pairs from, to in any order
   */
  public static List<double[]> without(double from, double to, List<double[]> without) {
    List<double[]> left = new ArrayList<>();
    left.add(new double[] {from, to});
    for (double[] gap : without) {
      List<double[]> next = new ArrayList<>();
      for (double[] part : left) {
        if (gap[1] <= part[0] || part[1] <= gap[0]) {
          next.add(part);
          continue;
        }
        if (part[0] < gap[0]) {
          next.add(new double[] {part[0], gap[0]});
        }
        if (gap[1] < part[1]) {
          next.add(new double[] {gap[1], part[1]});
        }
      }
      left = next;
    }
    return left;
  }
}
