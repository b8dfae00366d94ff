package mullwright.drawing.detail;

import mullwright.drawing.Box;
import mullwright.drawing.Scale;

/**
 * Puts a section on paper: outdoors on the left for an upright one, below for a level one, so that
 * what is on the right seen from outdoors stays on the right.
 *
 * @param upright true for a section through a horizontal
 */
record Across(boolean upright, Scale scale) {
  /**
   * A rectangle.
   *
   * @param u1 across the member, from its line, up or to the right [mm]; {@code u2} likewise
   * @param z1 out of the wall, from the outer face of the glass [mm]; {@code z2} likewise
   */
  Box box(double u1, double z1, double u2, double z2) {
    double x1 = scale.paper(upright ? -z1 : u1);
    double x2 = scale.paper(upright ? -z2 : u2);
    double y1 = scale.paper(upright ? u1 : -z1);
    double y2 = scale.paper(upright ? u2 : -z2);
    return new Box(Math.min(x1, x2), Math.min(y1, y2), Math.max(x1, x2), Math.max(y1, y2));
  }

  /** A point on paper: x and y. */
  double[] point(double u, double z) {
    return new double[] {
      scale.paper(upright ? -z : u), scale.paper(upright ? u : -z),
    };
  }
}
