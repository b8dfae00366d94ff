package mullwright.takeoff;

import java.util.Optional;
import mullwright.layout.Cell;
import mullwright.layout.GlassSizes;
import mullwright.layout.Glazed;
import mullwright.layout.SettingBlockPlaces;
import mullwright.layout.WallLayout;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.quantity.LengthPrinter;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;
import mullwright.quantity.UnitSystem;

/**
 * Counts glass by type, the blocks it stands on, and the insulation and back pans of spandrels.
 *
 * <p>An opening by others takes no glass of this wall.
 */
final class GlassTakeoff {
  private final WallLayout layout;
  private final Faces faces;
  private final Tally tally;

  GlassTakeoff(WallLayout layout, Faces faces, Tally tally) {
    this.layout = layout;
    this.faces = faces;
    this.tally = tally;
  }

  void count() {
    for (Cell cell : layout.cells()) {
      if (Glazed.lite(cell)) {
        glass(cell);
      }
    }
    for (Cell cell : layout.cells()) {
      SettingBlockPlaces.of(cell).ifPresent(blocks -> blocks(cell, blocks));
    }
    for (Cell cell : layout.cells()) {
      if (Glazed.lite(cell) && !cell.use().orElseThrow().vision()) {
        spandrel(cell);
      }
    }
  }

  private void glass(Cell cell) {
    GlassSizes sizes = GlassSizes.of(cell, UnitSystem.US);
    boolean vision = cell.use().orElseThrow().vision();
    boolean operable = cell.use().orElseThrow().operable();
    tally.area(
        new Tally.Thing(
            Phase.GLASS,
            "glass",
            faces.of(cell),
            vision ? "vision lite" : "spandrel lite",
            cell.use().orElseThrow().glass().value(),
            operable ? "operable" : "",
            cell.rectangular() ? "" : "sloped lites by their bounding size, not checked"),
        sizes.area().si(),
        sizes.mass().map(Quantity::si));
  }

  private void blocks(Cell cell, SettingBlockPlaces blocks) {
    String part = systemPart(PartKind.SETTING_BLOCK);
    tally.count(
        new Tally.Thing(
            Phase.GLASS,
            "setting-block",
            faces.of(cell),
            "setting block",
            part,
            LengthPrinter.both(blocks.length(), UnitSystem.US) + " long",
            ""),
        SettingBlockPlaces.COUNT);
  }

  private void spandrel(Cell cell) {
    String part = systemPart(PartKind.INSULATION);
    if (part.isEmpty()) {
      return;
    }
    Rational area = cell.daylightWidth().metres().times(cell.daylightHeight().metres());
    tally.area(thing(cell, "insulation", "spandrel insulation", part), area, Optional.empty());
    layout
        .catalog()
        .find(PartKind.INSULATION, part)
        .filter(Part.Plain.class::isInstance)
        .map(found -> ((Part.Plain) found).facts().get("back-pan"))
        .map(Given::value)
        .ifPresent(
            pan -> tally.area(thing(cell, "back-pan", "back pan", pan), area, Optional.empty()));
  }

  private Tally.Thing thing(Cell cell, String sort, String item, String part) {
    return new Tally.Thing(
        Phase.GLASS, sort, faces.of(cell), item, part, "", "size of the daylight opening");
  }

  private String systemPart(PartKind kind) {
    return layout
        .wall()
        .system()
        .flatMap(system -> Optional.ofNullable(system.parts().get(kind)))
        .map(Given::value)
        .orElse("");
  }
}
