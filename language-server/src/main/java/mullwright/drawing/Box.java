package mullwright.drawing;

/**
 * An upright rectangle.
 *
 * @param left smallest x, {@code right} largest
 * @param bottom smallest y, {@code top} largest
 */
public record Box(double left, double bottom, double right, double top) {
  /** The box of nothing: joined to another it gives the other. */
  public static final Box NOTHING =
      new Box(
          Double.POSITIVE_INFINITY,
          Double.POSITIVE_INFINITY,
          Double.NEGATIVE_INFINITY,
          Double.NEGATIVE_INFINITY);

  /** A box round a centre. */
  public static Box around(double x, double y, double width, double height) {
    return new Box(x - width / 2, y - height / 2, x + width / 2, y + height / 2);
  }

  public double width() {
    return right - left;
  }

  public double height() {
    return top - bottom;
  }

  public double middleX() {
    return (left + right) / 2;
  }

  public double middleY() {
    return (bottom + top) / 2;
  }

  /** True if nothing is in it. */
  public boolean empty() {
    return right < left || top < bottom;
  }

  /** The least box that holds both. */
  public Box with(Box other) {
    return new Box(
        Math.min(left, other.left),
        Math.min(bottom, other.bottom),
        Math.max(right, other.right),
        Math.max(top, other.top));
  }

  /** The least box that also holds a point. */
  public Box with(double x, double y) {
    return new Box(Math.min(left, x), Math.min(bottom, y), Math.max(right, x), Math.max(top, y));
  }

  /** What both have in common; {@link #empty()} if nothing. */
  public Box common(Box other) {
    return new Box(
        Math.max(left, other.left),
        Math.max(bottom, other.bottom),
        Math.min(right, other.right),
        Math.min(top, other.top));
  }

  /** True if they have some area in common. */
  public boolean overlaps(Box other) {
    return left < other.right && other.left < right && bottom < other.top && other.bottom < top;
  }

  /** True if the other lies in it wholly. */
  public boolean holds(Box other) {
    return left <= other.left && other.right <= right && bottom <= other.bottom && other.top <= top;
  }

  public boolean holds(double x, double y) {
    return left <= x && x <= right && bottom <= y && y <= top;
  }

  /** So much larger on all sides; smaller if negative. */
  public Box grown(double by) {
    return new Box(left - by, bottom - by, right + by, top + by);
  }

  public Box moved(double dx, double dy) {
    return new Box(left + dx, bottom + dy, right + dx, top + dy);
  }

  /** Its corners as a polygon, from the lower left, turning left. */
  public double[] corners() {
    return new double[] {left, bottom, right, bottom, right, top, left, top};
  }

  /** The least box that holds a polygon. */
  public static Box of(double... points) {
    Box box = NOTHING;
    for (int at = 0; at < points.length; at += 2) {
      box = box.with(points[at], points[at + 1]);
    }
    return box;
  }
}
