package mullwright.preview;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import mullwright.drawing.Box;
import mullwright.drawing.Labels;
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
    if (wall.get().layout() != last || units != lastUnits) {
      last = wall.get().layout();
      lastUnits = units;
      drawn = paint(wall.get(), units);
    }
    return drawn;
  }

  private static List<Slot> paint(SceneWall wall, UnitSystem units) {
    Elevation elevation =
        Elevation.of(wall.layout(), options(units, new PageLabels(wall.details().marks())));
    SvgParts parts = SvgParts.of(elevation, "d");
    return List.of(
        Slot.of("frame", frame(parts.box())),
        Slot.of("style", parts.style()),
        Slot.of("definitions", parts.definitions()),
        slot("drawing", parts));
  }

  /** The parts of a drawing, each under its layer's name. */
  static Slot slot(String name, SvgParts parts) {
    Slot slot = new Slot(name);
    for (SvgParts.Part part : parts.parts()) {
      slot.put(
          part.key(),
          "<g role=\"presentation\" data-layer=\""
              + part.layer().word()
              + "\">"
              + part.markup()
              + "</g>");
    }
    return slot;
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
}
