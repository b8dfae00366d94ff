package mullwright.drawing.svg;

import mullwright.drawing.Box;
import mullwright.drawing.Drawing;

/** Writes a drawing as SVG. The same drawing gives the same text every time. */
public final class Svg {
  private static final double MARGIN = 5;

  /** Who says what colours are. */
  public enum Colours {
    /** The drawing itself: ink on white paper. */
    PAPER,
    /**
     * The page it stands in, by custom properties: {@code --drawing-ink}, {@code --drawing-soft},
     * {@code --drawing-paper}, {@code --drawing-metal}, {@code --drawing-glass}, {@code
     * --drawing-spandrel}, {@code --drawing-others}, {@code --drawing-finding}. One that is not set
     * is as on paper.
     */
    PAGE
  }

  private Svg() {}

  /** A file of its own, in real size of paper. */
  public static String file(Drawing drawing) {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + write(drawing, Colours.PAPER, "d");
  }

  /**
   * An element of a page.
   *
   * @param id begins the names of its hatches and symbols, which must differ on one page
   */
  public static String inline(Drawing drawing, String id) {
    return write(drawing, Colours.PAGE, id);
  }

  private static String write(Drawing drawing, Colours colours, String id) {
    SvgSurface surface = new SvgSurface(id);
    drawing.paint(surface);
    Box box = drawing.extent().grown(drawing.bordered() ? 0 : MARGIN);
    StringBuilder out = new StringBuilder(surface.body().length() + 8192);
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drawing\" role=\"img\" width=\"");
    Numbers.append(box.width(), out);
    out.append("mm\" height=\"");
    Numbers.append(box.height(), out);
    out.append("mm\" viewBox=\"");
    Numbers.append(box.left(), out);
    out.append(' ');
    Numbers.append(-box.top(), out);
    out.append(' ');
    Numbers.append(box.width(), out);
    out.append(' ');
    Numbers.append(box.height(), out);
    out.append("\" data-scale=\"");
    Numbers.append(drawing.scale().ratio(), out);
    out.append("\">\n<title>");
    Escaped.append(drawing.title(), out);
    out.append("</title>\n<style>\n");
    new SvgStyle(colours).write(surface.used(), out);
    out.append("</style>\n");
    surface.definitions(out);
    if (colours == Colours.PAPER) {
      out.append("<rect class=\"d-paper\" x=\"");
      Numbers.append(box.left(), out);
      out.append("\" y=\"");
      Numbers.append(-box.top(), out);
      out.append("\" width=\"");
      Numbers.append(box.width(), out);
      out.append("\" height=\"");
      Numbers.append(box.height(), out);
      out.append("\"/>\n");
    }
    return out.append(surface.body()).append("</svg>\n").toString();
  }
}
