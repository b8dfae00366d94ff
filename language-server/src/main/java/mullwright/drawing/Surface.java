package mullwright.drawing;

import java.util.List;

/**
 * What a drawing is painted on. Lengths are millimetres of paper, x to the right, y up; angles are
 * degrees, turning left.
 *
 * <p>Points are given as x and y in turn. A pen of null draws no line, a tone of null does not
 * fill.
 */
public interface Surface {
  /** What follows is of that kind, until {@link #endLayer()}. Layers do not nest. */
  void beginLayer(Layer layer);

  /** Ends the layer. */
  void endLayer();

  /** What follows shows that, until {@link #end()}. Subjects stand within a layer and may nest. */
  void begin(Subject subject);

  /** Ends the innermost subject. */
  void end();

  /** A straight line. */
  void line(double x1, double y1, double x2, double y2, Pen pen);

  /** A line with corners. */
  void polyline(double[] points, Pen pen);

  /** A closed area. */
  void polygon(double[] points, Pen pen, Tone fill);

  /** A circle. */
  void circle(double x, double y, double radius, Pen pen, Tone fill);

  /** Part of a circle. */
  void arc(double x, double y, double radius, double start, double sweep, Pen pen);

  /**
   * A hatched area.
   *
   * @param clear boxes within it that stay free of lines, for letters to be read
   */
  void hatch(double[] polygon, Hatch hatch, List<Box> clear);

  /**
   * A line of text.
   *
   * @param x of the point that {@code align} names
   * @param y of the base line
   * @param angle about that point
   */
  void text(String text, double x, double y, double angle, Lettering lettering, Align align);

  /** A symbol at a place. */
  void symbol(Symbol symbol, double x, double y);

  /** A line of level text. */
  default void text(String text, double x, double y, Lettering lettering, Align align) {
    text(text, x, y, 0, lettering, align);
  }

  /** An upright rectangle. */
  default void box(Box box, Pen pen, Tone fill) {
    polygon(box.corners(), pen, fill);
  }
}
