package mullwright.drawing;

/**
 * A level: a line with an open right-angled arrowhead on it, the name over the line and the height
 * under it. Source: ISO 129-1 and ISO 4157, level indications (from memory).
 *
 * @param x where the line begins, nearest the wall
 * @param y the level
 * @param name of the floor
 * @param height as a figure, or ""
 */
public record LevelMark(double x, double y, String name, String height) {
  private static final double LEAD = 6;
  private static final double HEAD = 2;

  /** How far it reaches to the right of {@code x} [mm]. */
  public double width() {
    return LEAD + HEAD + 1 + Math.max(Lettering.NAME.width(name), Lettering.NOTE.width(height));
  }

  /** Paints it; to be called within a layer. */
  public void paint(Surface surface) {
    surface.line(x, y, x + width(), y, Pen.THIN);
    surface.polyline(
        new double[] {x + LEAD - HEAD, y + HEAD, x + LEAD, y, x + LEAD + HEAD, y + HEAD},
        Pen.FINE_EDGE);
    double text = x + LEAD + HEAD + 1;
    surface.text(name, text, y + 0.9, Lettering.NAME, Align.LEFT);
    if (!height.isEmpty()) {
      surface.text(height, text, y - Lettering.NOTE.height() - 0.9, Lettering.NOTE, Align.LEFT);
    }
  }
}
