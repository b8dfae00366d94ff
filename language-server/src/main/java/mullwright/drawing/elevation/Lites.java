package mullwright.drawing.elevation;

import java.util.List;
import mullwright.drawing.Box;
import mullwright.drawing.Hatch;
import mullwright.drawing.Layer;
import mullwright.drawing.LineType;
import mullwright.drawing.LineWeight;
import mullwright.drawing.Pen;
import mullwright.drawing.Surface;
import mullwright.drawing.Tone;
import mullwright.layout.Cell;
import mullwright.model.Grid;

/**
 * Daylight openings and what fills them: glass one sees through has two strokes of light in its
 * upper corner, a spandrel is hatched, a louvre has blades, doors and voids have their diagonals.
 */
final class Lites implements ElevationPart {
  private static final Pen LIGHT = new Pen(LineWeight.NARROW, LineType.CONTINUOUS, Tone.SOFT);

  private static final double LEAST_LIGHT = 1.3;

  private final View view;
  private final Marks marks;

  Lites(View view, Marks marks) {
    this.view = view;
    this.marks = marks;
  }

  @Override
  public void paint(Surface surface) {
    surface.beginLayer(Layer.LITE);
    view.layout.cells().stream()
        .filter(cell -> cell.opening().isEmpty())
        .forEach(cell -> lite(surface, cell));
    surface.endLayer();
    surface.beginLayer(Layer.HATCH);
    view.layout.cells().forEach(cell -> hatch(surface, cell));
    surface.endLayer();
    surface.beginLayer(Layer.OPENING);
    view.layout.cells().stream()
        .filter(cell -> cell.opening().isPresent())
        .forEach(cell -> opening(surface, cell));
    surface.endLayer();
  }

  private void lite(Surface surface, Cell cell) {
    double[] corners = view.cut(view.corners(cell));
    if (corners.length == 0) {
      return;
    }
    surface.begin(view.subjects.of(cell));
    boolean vision = cell.use().filter(use -> use.vision()).isPresent();
    Tone fill = cell.use().isEmpty() ? Tone.PAPER : vision ? Tone.GLASS : Tone.SPANDREL;
    surface.polygon(corners, null, fill);
    if (vision) {
      light(surface, Box.of(corners));
    }
    surface.end();
  }

  private static double lightSize(Box box) {
    return Math.min(7, Math.min(box.width(), box.height()) / 4);
  }

  /** The room its strokes of light take in a lite one sees through. */
  static Box lightBox(Box box) {
    double size = lightSize(box) + 1.4;
    return new Box(box.right() - size, box.top() - size, box.right() - 1, box.top() - 1);
  }

  /** Two strokes of light in the upper corner. */
  static void light(Surface surface, Box box) {
    double size = lightSize(box);
    if (size < LEAST_LIGHT) {
      return;
    }
    double x = box.right() - 1.2;
    double y = box.top() - 1.2;
    surface.line(x - size, y, x, y - size, LIGHT);
    surface.line(x - size * 0.55, y, x, y - size * 0.55, LIGHT);
  }

  private void hatch(Surface surface, Cell cell) {
    Hatch hatch = hatch(cell);
    double[] corners = hatch == null ? new double[0] : view.cut(view.corners(cell));
    if (corners.length > 0) {
      surface.begin(view.subjects.of(cell));
      surface.hatch(corners, hatch, marks.clear(cell));
      surface.end();
    }
  }

  private static Hatch hatch(Cell cell) {
    if (cell.opening().isPresent()) {
      Grid.OpeningKind kind = cell.opening().get().kind();
      return kind == Grid.OpeningKind.LOUVRE || kind == Grid.OpeningKind.VENT ? Hatch.LOUVRE : null;
    }
    return cell.use().filter(use -> !use.vision()).isPresent() ? Hatch.SPANDREL : null;
  }

  private void opening(Surface surface, Cell cell) {
    double[] whole = view.corners(cell);
    double[] corners = view.cut(whole);
    if (corners.length == 0) {
      return;
    }
    surface.begin(view.subjects.of(cell));
    Grid.OpeningKind kind = cell.opening().orElseThrow().kind();
    Pen pen =
        switch (kind) {
          case DOOR, VENT -> Pen.OTHERS;
          case VOID -> Pen.THIN;
          case LOUVRE -> null;
        };
    surface.polygon(corners, Pen.OTHERS, null);
    if (pen != null && corners == whole) {
      List<Box> clear = marks.clear(cell);
      broken(surface, whole[0], whole[1], whole[4], whole[5], clear, pen);
      broken(surface, whole[6], whole[7], whole[2], whole[3], clear, pen);
    }
    surface.end();
  }

  // a line that stops at letters
  private static void broken(
      Surface surface, double x1, double y1, double x2, double y2, List<Box> clear, Pen pen) {
    List<double[]> gaps = clear.stream().map(box -> gap(x1, y1, x2, y2, box)).toList();
    for (double[] part : mullwright.drawing.Clip.without(0, 1, gaps)) {
      surface.line(
          x1 + part[0] * (x2 - x1),
          y1 + part[0] * (y2 - y1),
          x1 + part[1] * (x2 - x1),
          y1 + part[1] * (y2 - y1),
          pen);
    }
  }

  // the stretch of a line within a box, as shares of its length
  private static double[] gap(double x1, double y1, double x2, double y2, Box box) {
    double[] xs = {(box.left() - x1) / (x2 - x1), (box.right() - x1) / (x2 - x1)};
    double[] ys = {(box.bottom() - y1) / (y2 - y1), (box.top() - y1) / (y2 - y1)};
    double from = Math.max(Math.min(xs[0], xs[1]), Math.min(ys[0], ys[1]));
    double to = Math.min(Math.max(xs[0], xs[1]), Math.max(ys[0], ys[1]));
    return from < to ? new double[] {from, to} : new double[] {2, 2};
  }
}
