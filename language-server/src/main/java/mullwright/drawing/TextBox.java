package mullwright.drawing;

/** The room a line of text takes. */
public final class TextBox {
  /** How far letters go below their base line, in heights of a capital. */
  private static final double DESCENT = 0.32;

  private TextBox() {}

  /** The corners of the text's own rectangle, descenders included, turned as the text is. */
  public static double[] corners(
      String text, double x, double y, double angle, Lettering lettering, Align align) {
    double width = lettering.width(text);
    double left = -width * align.share();
    double low = -DESCENT * lettering.height();
    double[] box = new Box(left, low, left + width, lettering.height()).corners();
    double cos = Math.cos(Math.toRadians(angle));
    double sin = Math.sin(Math.toRadians(angle));
    double[] out = new double[box.length];
    for (int at = 0; at < box.length; at += 2) {
      out[at] = x + box[at] * cos - box[at + 1] * sin;
      out[at + 1] = y + box[at] * sin + box[at + 1] * cos;
    }
    return out;
  }

  /** The least upright box round it. */
  public static Box of(
      String text, double x, double y, double angle, Lettering lettering, Align align) {
    return Box.of(corners(text, x, y, angle, lettering, align));
  }
}
