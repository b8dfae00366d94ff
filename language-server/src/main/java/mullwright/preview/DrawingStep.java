package mullwright.preview;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import mullwright.drawing.Box;
import mullwright.drawing.Labels;
import mullwright.drawing.Layer;
import mullwright.drawing.Subject;
import mullwright.drawing.TextPlace;
import mullwright.drawing.elevation.Elevation;
import mullwright.drawing.elevation.ElevationOptions;
import mullwright.drawing.svg.SvgParts;
import mullwright.layout.PieceMarks;
import mullwright.layout.PieceRef;
import mullwright.layout.WallLayout;
import mullwright.model.Origin;
import mullwright.quantity.UnitSystem;

/** The elevation, piece by piece. */
final class DrawingStep implements Painter.Step {
  private static final double MARGIN = 4;

  private final Tables tables;
  private WallLayout last;
  private UnitSystem lastUnits;
  private boolean lastFar;
  private List<Slot> drawn = List.of();

  DrawingStep(Tables tables) {
    this.tables = tables;
  }

  /** Where things of the wall stand in the elevation. */
  static Plane plane(UnitSystem units) {
    return new Plane(options(units, Labels.none()).scale().ratio());
  }

  private static ElevationOptions options(UnitSystem units, Labels labels) {
    return ElevationOptions.of(units, labels);
  }

  @Override
  public List<Slot> paint(Stage.Now now, Look look) {
    Optional<SceneWall> wall = Painter.wall(now.scene(), now, look);
    if (wall.isEmpty()) {
      last = null;
      return List.of(new Slot("definitions"), new Slot("drawing"));
    }
    UnitSystem units = tables.units(wall.get().file());
    // a wall that comes out the very same keeps its layout
    if (wall.get().layout() != last || units != lastUnits || look.far() != lastFar) {
      drawn = paint(wall.get(), units, look.far());
      last = wall.get().layout();
      lastUnits = units;
      lastFar = look.far();
    }
    return drawn;
  }

  private static List<Slot> paint(SceneWall wall, UnitSystem units, boolean far) {
    ElevationOptions options = options(units, new PageLabels(wall.details().marks()));
    Elevation elevation = Elevation.of(wall.layout(), far ? options.unmarked() : options);
    SvgParts parts = SvgParts.of(elevation, "d", new Told());
    Slot slot = new Slot("drawing");
    parts.parts().forEach(part -> slot.put(part.key(), part.markup()));
    return List.of(
        Slot.of("frame", frame(parts.box())),
        Slot.of("style", parts.style()),
        Slot.of("definitions", parts.definitions()),
        slot);
  }

  /**
   * What the page says of a part: its layer, the piece it shows. The first part that shows a piece
   * stands for it; what shows it again, such as its mark, says no more than which it is.
   */
  private static final class Told implements SvgParts.Attributes {
    private final Set<PieceRef> stood = new HashSet<>();

    @Override
    public void write(Layer layer, Optional<Subject> subject, StringBuilder out) {
      out.append(" data-layer=\"").append(layer.word()).append('"');
      Optional<PieceRef> piece = subject.flatMap(Subject::piece);
      piece.ifPresent(is -> out.append(" data-piece=\"").append(is.word()).append('"'));
      if (piece.isEmpty() || !stood.add(piece.get())) {
        out.append(" role=\"presentation\"");
        return;
      }
      out.append(" id=\"piece-").append(piece.get().word());
      out.append("\" role=\"option\" aria-selected=\"false\" aria-label=\"");
      if (!subject.get().mark().isEmpty()) {
        out.append(Markup.escaped(subject.get().mark())).append(", ");
      }
      out.append(Markup.escaped(subject.get().name())).append('"');
    }
  }

  /** A box with some room round it, as a view box says it. */
  static String frame(Box box) {
    Box room = box.grown(MARGIN);
    return String.format(
        Locale.ROOT, "%.2f %.2f %.2f %.2f", room.left(), -room.top(), room.width(), room.height());
  }

  /**
   * Marks, but no places in the text: those move with every letter typed before them, and a click
   * is looked up here anyway.
   */
  private record PageLabels(PieceMarks marks) implements Labels {
    @Override
    public String mark(PieceRef piece) {
      return marks.mark(piece);
    }

    @Override
    public Optional<TextPlace> place(Origin statement) {
      return Optional.empty();
    }
  }

  @Override
  public String what() {
    return "the elevation";
  }
}
