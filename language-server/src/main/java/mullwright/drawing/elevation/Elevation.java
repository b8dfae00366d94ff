package mullwright.drawing.elevation;

import java.util.List;
import java.util.stream.Stream;
import mullwright.drawing.Align;
import mullwright.drawing.Box;
import mullwright.drawing.Drawing;
import mullwright.drawing.Layer;
import mullwright.drawing.Lettering;
import mullwright.drawing.Measuring;
import mullwright.drawing.Pen;
import mullwright.drawing.Scale;
import mullwright.drawing.Surface;
import mullwright.drawing.Taken;
import mullwright.layout.Cell;
import mullwright.layout.WallLayout;

/**
 * The elevation of a wall: lites, members, splices, anchors, grid, levels, dimension strings, marks
 * and keynotes.
 *
 * <p>The origin of its paper is the first grid line at the project's datum.
 */
public final class Elevation implements Drawing {
  /** From what stands round the frame down to the title, where the strings leave room. */
  private static final double UNDER = 42;

  /** Between the strings and the title. */
  private static final double APART = 4;

  private final View view;
  private final Marks marks;
  private final List<ElevationPart> parts;
  private final Box extent;

  /** Base line of the title. */
  private final double titleAt;

  private Elevation(View view) {
    this.view = view;
    Taken taken = new Taken();
    Splices splices = new Splices(view);
    Anchors anchors = new Anchors(view);
    view.layout.verticals().forEach(piece -> taken.take(view.whole(piece).grown(0.4)));
    view.layout
        .horizontals()
        .forEach(piece -> view.boxes(piece).forEach(box -> taken.take(box.grown(0.3))));
    view.layout.splices().forEach(joint -> taken.take(splices.box(joint)));
    view.layout.anchors().forEach(anchor -> taken.take(anchors.box(anchor)));
    view.layout.cells().stream()
        .filter(cell -> cell.use().filter(use -> use.vision()).isPresent())
        .forEach(cell -> taken.take(Lites.lightBox(Box.of(view.corners(cell)))));
    new MatchLines(view).boxes().forEach(taken::take);
    this.marks = new Marks(view, taken);
    List<ElevationPart> within =
        List.of(new Lites(view, marks), new Surroundings.Slabs(view, marks), new Members(view));
    Dimensions dimensions = new Dimensions(view);
    this.titleAt = titleAt(dimensions);
    List<ElevationPart> round =
        List.of(
            splices,
            anchors,
            marks,
            new Surroundings(view),
            dimensions,
            new MatchLines(view),
            new Keynotes(view, taken));
    this.parts = Stream.concat(within.stream(), round.stream()).toList();
    this.extent = view.frame.empty() ? new Box(0, 0, 60, 20) : reach(round);
  }

  /** Under the dimension strings, which reach further down where their figures stand upright. */
  private double titleAt(Dimensions dimensions) {
    double usual = view.around.bottom() - UNDER;
    if (view.frame.empty()) {
      return usual;
    }
    Measuring strings = new Measuring();
    dimensions.paint(strings);
    return Math.min(usual, strings.reach().bottom() - Lettering.TITLE.height() - APART);
  }

  private Box reach(List<ElevationPart> round) {
    if (!view.window.equals(Window.ALL)) {
      return Measuring.of(this);
    }
    // what fills the frame of a whole wall need not be painted to know how far it reaches
    Measuring measuring = new Measuring();
    round.forEach(part -> part.paint(measuring));
    title(measuring);
    Box reach = measuring.reach().with(view.frame);
    for (Cell cell : view.layout.cells()) {
      reach = reach.with(Box.of(view.corners(cell)));
    }
    return reach;
  }

  /** The whole elevation of a wall. */
  public static Elevation of(WallLayout layout, ElevationOptions options) {
    return of(layout, options, Window.ALL);
  }

  static Elevation of(WallLayout layout, ElevationOptions options, Window window) {
    return new Elevation(new View(layout, options, window));
  }

  /** The members it shows, on paper. */
  Box frame() {
    return view.frame;
  }

  /** How many marks found no room at this scale. */
  public int marksLeftOut() {
    return marks.leftOut();
  }

  @Override
  public String title() {
    return "Elevation " + view.layout.wall().name() + view.part();
  }

  @Override
  public Scale scale() {
    return view.options.scale();
  }

  @Override
  public Box extent() {
    return extent;
  }

  @Override
  public void paint(Surface surface) {
    if (view.frame.empty()) {
      surface.beginLayer(Layer.NOTE);
      surface.text("No member stands in this wall yet.", 2, 8, Lettering.NOTE, Align.LEFT);
      surface.endLayer();
      return;
    }
    parts.forEach(part -> part.paint(surface));
    title(surface);
  }

  private void title(Surface surface) {
    double left = view.around.left();
    double y = titleAt;
    surface.beginLayer(Layer.NOTE);
    surface.text(title(), left, y, Lettering.TITLE, Align.LEFT);
    surface.line(left, y - 2, left + Math.max(60, Lettering.TITLE.width(title())), y - 2, Pen.CUT);
    String small =
        marks.leftOut() == 0 ? "" : ", " + marks.leftOut() + " marks find no room at this scale";
    surface.text(
        "Seen from outdoors, scale " + scale().words() + small,
        left,
        y - 6.5,
        Lettering.NOTE,
        Align.LEFT);
    surface.endLayer();
  }
}
