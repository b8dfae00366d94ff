package mullwright.drawing.elevation;

import java.util.ArrayList;
import java.util.List;
import mullwright.drawing.Align;
import mullwright.drawing.Box;
import mullwright.drawing.Clip;
import mullwright.drawing.GridBubble;
import mullwright.drawing.Layer;
import mullwright.drawing.Lettering;
import mullwright.drawing.LevelMark;
import mullwright.drawing.Pen;
import mullwright.drawing.Surface;
import mullwright.drawing.Taken;
import mullwright.drawing.TextBox;
import mullwright.layout.Cell;
import mullwright.model.Grid;

/** What stands round the frame: grid lines with bubbles above it, levels to its right. */
final class Surroundings implements ElevationPart {
  private static final double OFF = 3;
  private static final double STEM = 8;

  private final View view;

  Surroundings(View view) {
    this.view = view;
  }

  @Override
  public void paint(Surface surface) {
    surface.beginLayer(Layer.GRID);
    double top = lines(surface);
    faces(surface, top + 4);
    surface.endLayer();
    surface.beginLayer(Layer.FLOOR);
    for (Grid.Floor floor : view.floors()) {
      double y = view.p(floor.elevation().value());
      surface.begin(view.subjects.grid("floor", "floor " + floor.name(), floor.origin()));
      new LevelMark(
              view.around.right() + OFF,
              y,
              floor.name(),
              view.figures.level(floor.elevation().value()))
          .paint(surface);
      surface.end();
    }
    surface.endLayer();
  }

  /** Where the bubbles end above. */
  private double lines(Surface surface) {
    Taken taken = new Taken();
    double top = view.around.top() + STEM;
    for (Grid.Line line : view.lines()) {
      double x = view.p(line.x());
      GridBubble bubble =
          new GridBubble(line.name(), x, view.around.top() + STEM + GridBubble.RADIUS);
      while (!taken.free(bubble.box())) {
        bubble = new GridBubble(line.name(), x, bubble.y() + 2 * GridBubble.RADIUS + 1);
      }
      taken.take(bubble.box().grown(0.4));
      surface.begin(view.subjects.grid("line", "line " + line.name(), line.origin()));
      surface.line(x, view.around.top() + OFF, x, bubble.y() - GridBubble.RADIUS, Pen.CENTRE);
      bubble.paint(surface);
      surface.end();
      top = Math.max(top, bubble.box().top());
    }
    return top;
  }

  /** Names of faces, and the corners between them: these higher where both have no room. */
  private void faces(Surface surface, double y) {
    Taken taken = new Taken();
    Grid grid = view.layout.wall().grid();
    for (Grid.Face face : grid.faces()) {
      double left = view.p(grid.lines().get(face.firstLine()).x());
      double right = view.p(grid.lines().get(face.lastLine()).x());
      Box part = view.cut(new Box(left, view.around.bottom(), right, view.around.bottom()));
      if (!face.name().isEmpty() && part.width() > 0) {
        surface.text(face.name(), part.middleX(), y, Lettering.HEADING, Align.CENTRE);
        taken.take(TextBox.of(face.name(), part.middleX(), y, 0, Lettering.HEADING, Align.CENTRE));
      }
    }
    for (Grid.Corner corner : grid.corners()) {
      double x = view.p(grid.lines().get(corner.line()).x());
      if (view.showsX(x)) {
        String words = Corners.words(corner);
        double at = y;
        while (!taken.takeIfFree(
            TextBox.of(words, x, at, 0, Lettering.NOTE, Align.CENTRE).grown(0.8))) {
          at += Lettering.HEADING.height() * Lettering.LINE_PITCH;
        }
        surface.text(words, x, at, Lettering.NOTE, Align.CENTRE);
      }
    }
  }

  /** Levels of slabs behind the glass, broken where words stand. */
  static final class Slabs implements ElevationPart {
    private final View view;
    private final Marks marks;

    Slabs(View view, Marks marks) {
      this.view = view;
      this.marks = marks;
    }

    @Override
    public void paint(Surface surface) {
      surface.beginLayer(Layer.BUILDING);
      List<Seen> cells = seen();
      for (Grid.Floor floor : view.layout.wall().grid().floors()) {
        double top = view.p(floor.elevation().value());
        across(surface, top, cells);
        floor.slab().ifPresent(slab -> across(surface, top - view.p(slab.value()), cells));
      }
      surface.endLayer();
    }

    /** A cell one looks through, as far as it is shown. */
    private record Seen(Cell cell, Box box) {}

    private List<Seen> seen() {
      List<Seen> seen = new ArrayList<>();
      for (Cell cell : view.layout.cells()) {
        Box box = view.cut(Box.of(view.corners(cell)));
        if (!box.empty() && cell.opening().isEmpty()) {
          seen.add(new Seen(cell, box));
        }
      }
      return seen;
    }

    private void across(Surface surface, double y, List<Seen> cells) {
      if (!view.showsY(y)) {
        return;
      }
      for (Seen seen : cells) {
        if (seen.box.bottom() < y && y < seen.box.top()) {
          List<double[]> gaps =
              marks.clear(seen.cell).stream()
                  .filter(clear -> clear.bottom() < y && y < clear.top())
                  .map(clear -> new double[] {clear.left(), clear.right()})
                  .toList();
          Clip.without(seen.box.left(), seen.box.right(), gaps)
              .forEach(part -> surface.line(part[0], y, part[1], y, Pen.HIDDEN));
        }
      }
    }
  }
}
