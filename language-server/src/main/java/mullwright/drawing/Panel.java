package mullwright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * Notes or a legend: a heading and rows under it, for the strip beside a drawing.
 *
 * @param heading stands over its rows, and again where they go on elsewhere
 * @param rows from the top
 */
public record Panel(String heading, List<Row> rows) {
  /** Room its heading takes [mm]. */
  static final double HEAD = 8;

  private static final double SAMPLE = 12;

  public Panel {
    rows = List.copyOf(rows);
  }

  /**
   * A row.
   *
   * @param sample drawn round the origin beside the words, or null
   * @param room the sample's height [mm]; no more than 10 mm wide if there are words
   * @param words may take several lines
   */
  public record Row(Consumer<Surface> sample, double room, String words) {
    /** A small sample with its meaning. */
    public Row(Consumer<Surface> sample, String words) {
      this(sample, 7, words);
    }

    /** Words alone. */
    public static Row of(String words) {
      return new Row(null, 0, words);
    }

    private List<String> lines(double width) {
      return Paragraph.lines(words, Lettering.NOTE, width - (sample == null ? 0 : SAMPLE));
    }

    double height(double width) {
      double pitch = Lettering.NOTE.height() * Lettering.LINE_PITCH;
      return Math.max(room, lines(width).size() * pitch) + 1.2;
    }

    void paint(Surface surface, double x, double top, double width) {
      double pitch = Lettering.NOTE.height() * Lettering.LINE_PITCH;
      double text = sample == null ? x : x + SAMPLE;
      double first = top - Lettering.NOTE.height();
      List<String> lines = lines(width);
      if (sample != null) {
        double middle = top - room / 2;
        sample.accept(new Moved(surface, x + SAMPLE / 2 - 1, middle));
        first = lines.size() == 1 ? middle - Lettering.NOTE.height() / 2 : first;
      }
      for (int i = 0; i < lines.size(); i++) {
        surface.text(lines.get(i), text, first - i * pitch, Lettering.NOTE, Align.LEFT);
      }
    }
  }

  /**
   * Paints as many rows as there is room for.
   *
   * @param top where it begins
   * @param bottom where it must end
   * @return where it ends, and the rows that found no room
   */
  Rest paint(Surface surface, double x, double top, double width, double bottom) {
    if (rows.isEmpty() || top - HEAD - rows.get(0).height(width) < bottom) {
      return new Rest(top, rows);
    }
    surface.text(heading, x, top - Lettering.HEADING.height() - 1, Lettering.HEADING, Align.LEFT);
    double y = top - HEAD;
    List<Row> left = new ArrayList<>(rows);
    while (!left.isEmpty() && y - left.get(0).height(width) >= bottom) {
      left.get(0).paint(surface, x, y, width);
      y -= left.remove(0).height(width);
    }
    return new Rest(y - 4, left);
  }

  /** What is left of a panel. */
  record Rest(double y, List<Row> rows) {}
}
