package mullwright.preview;

import java.util.List;
import java.util.Optional;
import mullwright.layout.PieceRef;
import mullwright.layout.WallLayout;
import mullwright.quantity.UnitSystem;

/** A section beside the line that was chosen, or beside the middle one. */
final class SectionStep implements Painter.Step {
  private final Tables tables;
  private WallLayout last;
  private int lastLine = -1;
  private UnitSystem lastUnits;
  private List<Slot> drawn = List.of();

  SectionStep(Tables tables) {
    this.tables = tables;
  }

  @Override
  public List<Slot> paint(Stage.Now now, Look look) {
    if (!look.sees("section")) {
      return drawn;
    }
    Optional<SceneWall> wall = Painter.wall(now.scene(), now, look);
    if (wall.isEmpty() || wall.get().layout().wall().grid().lines().isEmpty()) {
      last = null;
      drawn = List.of(new Slot("section"), new Slot("section-words"));
      return drawn;
    }
    WallLayout layout = wall.get().layout();
    int line = line(layout, look);
    UnitSystem units = tables.units(wall.get().file());
    if (layout != last || line != lastLine || units != lastUnits) {
      drawn = paint(layout, line, units);
      last = layout;
      lastLine = line;
      lastUnits = units;
    }
    return drawn;
  }

  /** The line of the chosen piece; of a horizontal or a lite, the one on its left. */
  private static int line(WallLayout layout, Look look) {
    int middle = layout.wall().grid().lines().size() / 2;
    return new Pieces(layout).of(look.at()).map(piece -> line(layout, piece)).orElse(middle);
  }

  private static int line(WallLayout layout, PieceRef piece) {
    return switch (piece.kind()) {
      case VERTICAL -> layout.verticals().get(piece.index()).line();
      case HORIZONTAL -> layout.horizontals().get(piece.index()).leftLine();
      case SPLICE -> layout.splices().get(piece.index()).line();
      case ANCHOR -> layout.anchors().get(piece.index()).use().line();
      case CELL ->
          layout.wall().grid().bays().get(layout.cells().get(piece.index()).firstBay()).left();
      case COVER -> layout.wall().grid().lines().size() / 2;
    };
  }

  private static List<Slot> paint(WallLayout layout, int line, UnitSystem units) {
    Section section = new Section(layout, line, DrawingStep.plane(units), units);
    Slot slot = new Slot("section");
    section.draw(slot);
    return List.of(
        Slot.of("section-frame", section.frame()),
        Slot.of("section-words", "<p>" + Markup.escaped(section.words()) + "</p>"),
        slot);
  }

  @Override
  public String what() {
    return "the section";
  }
}
