package mullwright.model;

/**
 * Plastic section modulus of an outline for wind: the area on either side of the line that halves
 * it, times its distance from that line.
 *
 * <p>Z = ∫|z − z₀| dA, z₀ where half of the area lies on either side. Source: textbook.
 */
final class PlasticModulus {
  /** So many halvings leave less than a billionth of the depth. */
  private static final int HALVINGS = 60;

  private PlasticModulus() {}

  /** Z [m³]; 0 for an outline with no area. */
  static double of(Outline outline) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double area = 0;
    for (Outline.Rectangle r : outline.rectangles()) {
      low = Math.min(low, r.z().toMetres());
      high = Math.max(high, top(r));
      area += sign(r) * width(r) * r.depth().toMetres();
    }
    if (area <= 0) {
      return 0;
    }
    double z = 0;
    for (int i = 0; i < HALVINGS; i++) {
      z = (low + high) / 2;
      if (areaBelow(outline, z) < area / 2) {
        low = z;
      } else {
        high = z;
      }
    }
    double sum = 0;
    for (Outline.Rectangle r : outline.rectangles()) {
      double from = r.z().toMetres() - z;
      double to = top(r) - z;
      // ∫|z| dz from one to the other
      sum += sign(r) * width(r) * (to * Math.abs(to) - from * Math.abs(from)) / 2;
    }
    return Math.max(0, sum);
  }

  private static double areaBelow(Outline outline, double z) {
    double area = 0;
    for (Outline.Rectangle r : outline.rectangles()) {
      double depth = Math.min(top(r), z) - r.z().toMetres();
      area += depth > 0 ? sign(r) * width(r) * depth : 0;
    }
    return area;
  }

  private static double top(Outline.Rectangle r) {
    return r.z().plus(r.depth()).toMetres();
  }

  private static double width(Outline.Rectangle r) {
    return r.width().toMetres();
  }

  private static int sign(Outline.Rectangle r) {
    return r.hole() ? -1 : 1;
  }
}
