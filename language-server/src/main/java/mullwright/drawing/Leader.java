package mullwright.drawing;

/**
 * A leader: from a dot or an arrowhead on what is meant, by a slanting line and a short level one,
 * to a note. Source: ISO 128-2:2020, leader lines end in a dot within an outline, in an arrowhead
 * at it (from memory).
 *
 * @param x where it points, {@code y}
 * @param textX where the note's line begins (the end next to the leader), {@code textY} its base
 *     line
 * @param text one line
 * @param arrow true if it points at an edge, false if within an outline
 */
public record Leader(
    double x,
    double y,
    double textX,
    double textY,
    String text,
    boolean arrow,
    Lettering lettering) {
  private static final double SHOULDER = 2;
  private static final double DOT = 0.5;
  private static final double HEAD = 2.5;

  /** A leader with a note of the usual size. */
  public static Leader of(double x, double y, double textX, double textY, String text) {
    return new Leader(x, y, textX, textY, text, true, Lettering.NOTE);
  }

  /** Paints it; to be called within a layer. */
  public void paint(Surface surface) {
    boolean right = textX >= x;
    double middle = textY + lettering.height() / 2;
    double near = textX - (right ? 0.8 : -0.8);
    double bend = near - (right ? SHOULDER : -SHOULDER);
    surface.polyline(new double[] {x, y, bend, middle, near, middle}, Pen.THIN);
    if (arrow) {
      head(surface, bend - x, middle - y);
    } else {
      surface.circle(x, y, DOT, null, Tone.INK);
    }
    surface.text(text, textX, textY, lettering, right ? Align.LEFT : Align.RIGHT);
  }

  private void head(Surface surface, double dx, double dy) {
    double length = Math.hypot(dx, dy);
    if (length == 0) {
      return;
    }
    double ux = dx / length * HEAD;
    double uy = dy / length * HEAD;
    surface.polygon(
        new double[] {x, y, x + ux - uy / 6, y + uy + ux / 6, x + ux + uy / 6, y + uy - ux / 6},
        null,
        Tone.INK);
  }
}
