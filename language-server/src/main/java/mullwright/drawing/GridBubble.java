package mullwright.drawing;

/**
 * The name of a grid line in a circle; a name too long for it stands in a lozenge with round ends.
 *
 * @param x centre, {@code y} centre
 */
public record GridBubble(String name, double x, double y) {
  /** Half its height [mm]. */
  public static final double RADIUS = 4;

  /** How wide it is [mm]. */
  public double width() {
    return Math.max(2 * RADIUS, lettering().width(name) + RADIUS);
  }

  private Lettering lettering() {
    return Lettering.NAME.width(name) <= 1.5 * RADIUS ? Lettering.NAME : Lettering.NOTE;
  }

  /** The room it takes. */
  public Box box() {
    return Box.around(x, y, width(), 2 * RADIUS);
  }

  /** Paints it; to be called within a layer. */
  public void paint(Surface surface) {
    double flat = width() / 2 - RADIUS;
    if (flat <= 0) {
      surface.circle(x, y, RADIUS, Pen.FINE_EDGE, Tone.PAPER);
    } else {
      surface.box(Box.around(x, y, 2 * flat, 2 * RADIUS), null, Tone.PAPER);
      surface.arc(x + flat, y, RADIUS, -90, 180, Pen.FINE_EDGE);
      surface.arc(x - flat, y, RADIUS, 90, 180, Pen.FINE_EDGE);
      surface.line(x - flat, y + RADIUS, x + flat, y + RADIUS, Pen.FINE_EDGE);
      surface.line(x - flat, y - RADIUS, x + flat, y - RADIUS, Pen.FINE_EDGE);
    }
    Lettering lettering = lettering();
    surface.text(name, x, y - lettering.height() / 2, lettering, Align.CENTRE);
  }
}
