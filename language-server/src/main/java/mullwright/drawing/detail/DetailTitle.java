package mullwright.drawing.detail;

import java.util.List;
import mullwright.drawing.Align;
import mullwright.drawing.Lettering;
import mullwright.drawing.Paragraph;
import mullwright.drawing.Pen;
import mullwright.drawing.Scale;
import mullwright.drawing.Surface;
import mullwright.drawing.Tone;

/**
 * What stands under a detail: its number in a circle, its title over a line, its scale, and where
 * it is so.
 */
record DetailTitle(int number, String title, String words, Scale scale) {
  private static final double RADIUS = 5;
  private static final double WIDTH = 100;
  private static final int MOST_LINES = 3;
  private static final double PITCH = Lettering.NOTE.height() * Lettering.LINE_PITCH;

  /** Paints it with the circle's left end there, at the height of its middle. */
  void paint(Surface surface, double left, double y) {
    double x = left + 2 * RADIUS + 2;
    surface.circle(left + RADIUS, y, RADIUS, Pen.EDGE, Tone.PAPER);
    surface.text(
        Integer.toString(number), left + RADIUS, y - 1.75, Lettering.HEADING, Align.CENTRE);
    surface.line(left + 2 * RADIUS, y, x + WIDTH - 2 * RADIUS, y, Pen.EDGE);
    surface.text(title, x, y + 1.2, Lettering.HEADING, Align.LEFT);
    surface.text(scale.words(), x + WIDTH - 2 * RADIUS, y + 1.2, Lettering.NOTE, Align.RIGHT);
    List<String> lines = Paragraph.lines(words, Lettering.NOTE, WIDTH - 2 * RADIUS);
    double base = y - Lettering.NOTE.height() - 1.8;
    for (int at = 0; at < Math.min(MOST_LINES, lines.size()); at++) {
      boolean more = at == MOST_LINES - 1 && lines.size() > MOST_LINES;
      surface.text(
          lines.get(at) + (more ? " …" : ""), x, base - at * PITCH, Lettering.NOTE, Align.LEFT);
    }
  }
}
