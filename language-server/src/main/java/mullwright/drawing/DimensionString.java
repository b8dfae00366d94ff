package mullwright.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A string of dimensions: one line, an oblique stroke at each end of a part, extension lines back
 * to what is measured, the figures above the line, read from below or from the right.
 *
 * <p>A figure that finds no room between its strokes goes to the side of what is measured: turned
 * square to the string if its part is wide enough for that, else beside those before it, with a
 * leader. Source: ISO 129-1:2018, strokes at 45° (from memory).
 *
 * @param upright true if it measures heights, false for widths
 * @param at where the line lies: its y, or its x if upright
 * @param from where the extension lines begin: the edge of what is measured, or the string before
 * @param parts in order; neighbours may have an end in common
 * @param lettering of the figures
 */
public record DimensionString(
    boolean upright, double at, double from, List<Part> parts, Lettering lettering) {
  /** Room between two strings that lie side by side [mm]. */
  public static final double PITCH = 9;

  private static final double GAP = 1;
  private static final double BEYOND = 1.6;
  private static final double STROKE = 1.1;
  private static final double ABOVE = 0.8;
  private static final double OFF = 1.6;

  /**
   * One part of a string.
   *
   * @param start along the line, {@code end} greater
   * @param text the figure, or "" for a part that is only marked off
   */
  public record Part(double start, double end, String text) {}

  public DimensionString {
    parts = List.copyOf(parts);
  }

  /** A string of widths with figures of the usual size. */
  public static DimensionString level(double y, double from, List<Part> parts) {
    return new DimensionString(false, y, from, parts, Lettering.NOTE);
  }

  /** A string of heights with figures of the usual size. */
  public static DimensionString upright(double x, double from, List<Part> parts) {
    return new DimensionString(true, x, from, parts, Lettering.NOTE);
  }

  private boolean fits(Part part) {
    return lettering.width(part.text()) <= part.end() - part.start() - 1;
  }

  private boolean turned(Part part) {
    return !fits(part) && lettering.height() + 1 <= part.end() - part.start();
  }

  /** Room its figures take on the side of what is measured, from the line [mm]. */
  public double beside() {
    double most = 0;
    for (Part part : parts) {
      if (turned(part)) {
        most = Math.max(most, lettering.width(part.text()) + 2 * OFF);
      } else if (!fits(part) && !part.text().isEmpty()) {
        most = Math.max(most, lettering.height() + 1.6);
      }
    }
    return most;
  }

  /** Room its figures take on the other side, from the line [mm]. */
  public double above() {
    return ABOVE + lettering.height();
  }

  /** Paints it; to be called within a layer. */
  public void paint(Surface surface) {
    if (parts.isEmpty()) {
      return;
    }
    Frame frame = new Frame(surface, upright);
    double v = upright ? -at : at;
    double back = upright ? -from : from;
    double way = Math.signum(v - back);
    double last = Double.NaN;
    List<Part> crowded = new ArrayList<>();
    for (Part part : parts) {
      if (part.start() != last) {
        end(frame, part.start(), v, back, way);
      }
      end(frame, part.end(), v, back, way);
      last = part.end();
      frame.line(part.start(), v, part.end(), v);
      if (fits(part)) {
        frame.text(part.text(), (part.start() + part.end()) / 2, v + ABOVE, lettering);
      } else if (turned(part)) {
        frame.across(part, v, way, lettering);
      } else if (!part.text().isEmpty()) {
        crowded.add(part);
      }
    }
    beside(frame, v, crowded);
  }

  private static void end(Frame frame, double u, double v, double back, double way) {
    if (way != 0) {
      frame.line(u, back + way * GAP, u, v + way * BEYOND);
    }
    frame.line(u - STROKE, v - STROKE, u + STROKE, v + STROKE, Pen.EDGE);
  }

  private void beside(Frame frame, double v, List<Part> crowded) {
    double free = Double.NEGATIVE_INFINITY;
    for (Part part : crowded) {
      double middle = (part.start() + part.end()) / 2;
      double width = lettering.width(part.text());
      double u = Math.max(middle, free + width / 2);
      free = u + width / 2 + 1.2;
      double base = v - lettering.height() - 1.3;
      if (u != middle) {
        frame.line(middle, v, u, base + lettering.height() + 0.3);
      }
      frame.ground(u, base, width, lettering.height());
      frame.text(part.text(), u, base, lettering);
    }
  }

  /** Along and across the string: u and v are x and y, or y and −x. */
  private record Frame(Surface surface, boolean upright) {
    void line(double u1, double v1, double u2, double v2) {
      line(u1, v1, u2, v2, Pen.THIN);
    }

    void line(double u1, double v1, double u2, double v2, Pen pen) {
      if (upright) {
        surface.line(-v1, u1, -v2, u2, pen);
      } else {
        surface.line(u1, v1, u2, v2, pen);
      }
    }

    void text(String text, double u, double v, Lettering lettering) {
      surface.text(
          text, upright ? -v : u, upright ? u : v, upright ? 90 : 0, lettering, Align.CENTRE);
    }

    // square to the string, ending or beginning off the line on the side of what is measured
    void across(Part part, double v, double way, Lettering lettering) {
      double u = (part.start() + part.end()) / 2;
      double half = lettering.height() / 2;
      double off = v - (way == 0 ? 1 : way) * OFF;
      boolean before = way < 0;
      if (upright) {
        surface.text(part.text(), -off, u - half, 0, lettering, before ? Align.RIGHT : Align.LEFT);
      } else {
        surface.text(part.text(), u + half, off, 90, lettering, before ? Align.LEFT : Align.RIGHT);
      }
    }

    // no extension line of a string further out goes through the figure
    void ground(double u, double v, double width, double height) {
      Box box = new Box(u - width / 2, v, u + width / 2, v + height).grown(0.3);
      surface.box(
          upright ? new Box(-box.top(), box.left(), -box.bottom(), box.right()) : box,
          null,
          Tone.PAPER);
    }
  }
}
