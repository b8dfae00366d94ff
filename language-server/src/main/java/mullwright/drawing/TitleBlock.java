package mullwright.drawing;

import java.util.List;

/**
 * What the title block of every sheet of a set says. Source: ISO 7200:2004, identification, title
 * and sheet fields (from memory). No date: the same text gives the same sheet on any day.
 *
 * @param project its name, or ""
 * @param wall its name
 * @param revision of the project, or ""
 * @param status {@code For review, not for construction}
 * @param caution stands at its foot
 */
public record TitleBlock(
    String project, String wall, String revision, String status, String caution) {
  private static final double LINE = Lettering.NOTE.height() * Lettering.LINE_PITCH;
  private static final double CELL = 12;

  /** What differs from sheet to sheet. */
  record Fields(String title, String scale, String sheet, String paper) {}

  private double cautionHeight(double width) {
    int lines = Paragraph.lines(caution, Lettering.NOTE, width - 4).size();
    int words = Paragraph.lines(status, Lettering.HEADING, width - 4).size();
    return lines * LINE + words * 6 + 5;
  }

  /** How high it is at a width [mm]. */
  double height(double width) {
    return cautionHeight(width) + 5 * CELL;
  }

  /** Paints it with its lower left corner there. */
  void paint(Surface surface, double x, double y, double width, Fields fields) {
    double top = y + height(width);
    surface.box(new Box(x, y, x + width, top), Pen.CUT, null);
    double at = top;
    at = cell(surface, x, at, width, "Project", project);
    at = cell(surface, x, at, width, "Wall", wall);
    at = cell(surface, x, at, width, "Drawing", fields.title());
    cell(surface, x, at, width * 0.64, "Scale", fields.scale());
    at = cell(surface, x + width * 0.64, at, width * 0.36, "Revision", revision);
    cell(surface, x, at, width * 0.64, "Sheet", fields.sheet());
    at = cell(surface, x + width * 0.64, at, width * 0.36, "Paper", fields.paper());
    at -= 1.5;
    for (String line : Paragraph.lines(status, Lettering.HEADING, width - 4)) {
      surface.text(line, x + 2, at - 4, Lettering.HEADING, Align.LEFT);
      at -= 6;
    }
    List<String> lines = Paragraph.lines(caution, Lettering.NOTE, width - 4);
    for (int i = 0; i < lines.size(); i++) {
      surface.text(lines.get(i), x + 2, at - 3.2 - i * LINE, Lettering.NOTE, Align.LEFT);
    }
  }

  private static double cell(
      Surface surface, double x, double top, double width, String caption, String value) {
    surface.box(new Box(x, top - CELL, x + width, top), Pen.FINE_EDGE, null);
    surface.text(caption, x + 1.5, top - 3.2, Lettering.CAPTION, Align.LEFT);
    Lettering lettering = Lettering.HEADING;
    if (lettering.width(value) > width - 3) {
      lettering = Lettering.NOTE;
    }
    List<String> lines = Paragraph.lines(value, lettering, width - 3);
    double first = lines.size() > 1 ? top - 6.6 : top - CELL + 2.6;
    for (int i = 0; i < Math.min(2, lines.size()); i++) {
      String line = i == 1 && lines.size() > 2 ? lines.get(1) + " …" : lines.get(i);
      surface.text(line, x + 1.5, first - i * 3.9, lettering, Align.LEFT);
    }
    return top - CELL;
  }
}
