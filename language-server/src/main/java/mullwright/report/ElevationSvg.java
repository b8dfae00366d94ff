package mullwright.report;

import java.util.Locale;
import java.util.Map;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PieceRef;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.SpliceJoint;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;
import mullwright.quantity.Length;
import mullwright.review.PieceChange;

/**
 * Draws a small elevation with what changed tinted and hatched: new in one direction, gone in both,
 * changed in dots, so that nothing hangs on colour alone.
 *
 * @param id begins the names of its patterns, which must differ on one page
 * @param tints what happened to pieces of the layout; others are drawn plain
 */
record ElevationSvg(String id, WallLayout layout, Map<PieceRef, PieceChange.What> tints) {
  private static final double MARGIN = 700;
  private static final double MARK = 130;
  private static final double TEXT = 220;

  /** The drawing as an element of a page; "" if there is nothing to draw. */
  String write() {
    if (layout.verticals().isEmpty() && layout.horizontals().isEmpty()) {
      return "";
    }
    double left = Double.POSITIVE_INFINITY;
    double right = Double.NEGATIVE_INFINITY;
    double bottom = Double.POSITIVE_INFINITY;
    double top = Double.NEGATIVE_INFINITY;
    for (VerticalPiece piece : layout.verticals()) {
      left = Math.min(left, mm(piece.x()));
      right = Math.max(right, mm(piece.x()));
      bottom = Math.min(bottom, mm(piece.bottom()));
      top = Math.max(top, mm(piece.top()));
    }
    for (HorizontalPiece piece : layout.horizontals()) {
      left = Math.min(left, mm(piece.left()));
      right = Math.max(right, mm(piece.right()));
      bottom = Math.min(bottom, Math.min(mm(piece.yLeft()), mm(piece.yRight())));
      top = Math.max(top, Math.max(mm(piece.yLeft()), mm(piece.yRight())));
    }
    StringBuilder out = new StringBuilder();
    out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" viewBox=\"")
        .append(number(left - MARGIN))
        .append(' ')
        .append(number(-top - MARGIN))
        .append(' ')
        .append(number(right - left + 2 * MARGIN))
        .append(' ')
        .append(number(top - bottom + 2 * MARGIN))
        .append("\">\n<defs>\n");
    pattern("new", "M0 120L120 0", "#1b7f3b", out);
    pattern("gone", "M0 120L120 0M0 0L120 120", "#b3261e", out);
    pattern("changed", "M60 40L60 80", "#9a6700", out);
    out.append("</defs>\n");
    layout.cells().forEach(cell -> cell(cell, out));
    layout.horizontals().forEach(piece -> horizontal(piece, out));
    layout.verticals().forEach(piece -> vertical(piece, out));
    layout.splices().forEach(joint -> splice(joint, out));
    layout.anchors().forEach(anchor -> anchor(anchor, out));
    for (Grid.Line line : layout.wall().grid().lines()) {
      text(mm(line.x()), bottom - TEXT * 2, line.name(), out);
    }
    for (Grid.Floor floor : layout.wall().grid().floors()) {
      text(left - MARGIN / 2, mm(floor.elevation().value()), floor.name(), out);
    }
    return out.append("</svg>\n").toString();
  }

  private void pattern(String name, String strokes, String colour, StringBuilder out) {
    out.append("<pattern id=\"")
        .append(id)
        .append(name)
        .append("\" width=\"120\" height=\"120\" patternUnits=\"userSpaceOnUse\">")
        .append("<rect width=\"120\" height=\"120\" fill=\"")
        .append(colour)
        .append("\" fill-opacity=\".25\"/><path d=\"")
        .append(strokes)
        .append("\" stroke=\"")
        .append(colour)
        .append("\" stroke-width=\"26\" fill=\"none\"/></pattern>\n");
  }

  private String fill(PieceRef.Kind kind, int index, String plain) {
    PieceChange.What what = tints.get(new PieceRef(kind, index));
    return what == null ? plain : "url(#" + id + what.name().toLowerCase(Locale.ROOT) + ")";
  }

  private void cell(Cell cell, StringBuilder out) {
    boolean vision = cell.use().isPresent() && cell.use().get().vision();
    String plain = cell.use().isEmpty() ? "none" : vision ? "#dbeaf5" : "#e4e4e0";
    rectangle(
        mm(cell.left()),
        mm(cell.bottom()),
        mm(cell.right()),
        mm(cell.top()),
        fill(PieceRef.Kind.CELL, cell.index(), plain),
        cell.name(),
        out);
  }

  private void horizontal(HorizontalPiece piece, StringBuilder out) {
    double half = mm(piece.profile().face().value()) / 2;
    double a = mm(piece.yLeft());
    double b = mm(piece.yRight());
    double l = mm(piece.left());
    double r = mm(piece.right());
    shape(
        new double[] {l, a - half, r, b - half, r, b + half, l, a + half},
        fill(PieceRef.Kind.HORIZONTAL, piece.index(), "#ffffff"),
        piece.name(),
        out);
  }

  private void vertical(VerticalPiece piece, StringBuilder out) {
    double half = mm(piece.profile().face().value()) / 2;
    rectangle(
        mm(piece.x()) - half,
        mm(piece.bottom()),
        mm(piece.x()) + half,
        mm(piece.top()),
        fill(PieceRef.Kind.VERTICAL, piece.index(), "#ffffff"),
        piece.name(),
        out);
  }

  private void splice(SpliceJoint joint, StringBuilder out) {
    double x = mm(layout.verticals().get(joint.below()).x());
    double y = mm(joint.y());
    rectangle(
        x - MARK,
        y - MARK / 3,
        x + MARK,
        y + MARK / 3,
        fill(PieceRef.Kind.SPLICE, joint.index(), "#404040"),
        joint.name(),
        out);
  }

  private void anchor(PlacedAnchor anchor, StringBuilder out) {
    double x = mm(layout.wall().grid().lines().get(anchor.use().line()).x());
    double y = mm(anchor.y());
    shape(
        new double[] {x - MARK, y - MARK, x + MARK, y - MARK, x, y + MARK},
        fill(PieceRef.Kind.ANCHOR, anchor.index(), "#404040"),
        anchor.name(),
        out);
  }

  private static void rectangle(
      double left,
      double bottom,
      double right,
      double top,
      String fill,
      String name,
      StringBuilder out) {
    shape(new double[] {left, bottom, right, bottom, right, top, left, top}, fill, name, out);
  }

  private static void shape(double[] points, String fill, String name, StringBuilder out) {
    out.append("<polygon points=\"");
    for (int at = 0; at < points.length; at += 2) {
      out.append(at == 0 ? "" : " ")
          .append(number(points[at]))
          .append(',')
          .append(number(-points[at + 1]));
    }
    out.append("\" fill=\"")
        .append(fill)
        .append("\" stroke=\"#404040\" stroke-width=\"10\"><title>")
        .append(ReviewHtml.escaped(name))
        .append("</title></polygon>\n");
  }

  private static void text(double x, double y, String words, StringBuilder out) {
    out.append("<text x=\"")
        .append(number(x))
        .append("\" y=\"")
        .append(number(-y))
        .append("\" font-size=\"")
        .append(number(TEXT))
        .append("\" text-anchor=\"middle\">")
        .append(ReviewHtml.escaped(words))
        .append("</text>\n");
  }

  private static double mm(Length length) {
    return length.toMillimetres();
  }

  private static String number(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }
}
