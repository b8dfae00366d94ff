package mullwright.drawing.elevation;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import mullwright.drawing.Align;
import mullwright.drawing.Box;
import mullwright.drawing.Hatch;
import mullwright.drawing.Keynote;
import mullwright.drawing.Lettering;
import mullwright.drawing.Panel;
import mullwright.drawing.Pen;
import mullwright.drawing.Surface;
import mullwright.drawing.Tone;
import mullwright.layout.Cell;
import mullwright.layout.WallLayout;
import mullwright.model.AnchorUse;
import mullwright.model.Grid;
import mullwright.model.Part;
import mullwright.quantity.UnitSystem;

/** Notes, keynotes and what the signs of an elevation mean; only signs that are drawn. */
final class Legends {
  private static final Box SWATCH = Box.around(0, 0, 9, 5.5);

  private Legends() {}

  static List<Panel> of(WallLayout layout, ElevationOptions options, List<String> notes) {
    List<Panel> panels = new ArrayList<>();
    panels.add(new Panel("Glass", glass(layout)));
    panels.add(new Panel("Signs", signs(layout)));
    List<Panel.Row> keys = new ArrayList<>();
    for (Keynote note : options.keynotes()) {
      keys.add(new Panel.Row(surface -> Keynotes.sign(surface, note.number(), 0, 0), note.text()));
    }
    panels.add(new Panel("Keynotes", keys));
    List<Panel.Row> said = new ArrayList<>();
    said.add(
        Panel.Row.of(
            options.units() == UnitSystem.US
                ? "Dimensions in feet and inches, to 1/16\"."
                : "Dimensions in millimetres."));
    said.add(
        Panel.Row.of(
            "Widths nearest the frame are daylight openings; then lines, then overall. Heights:"
                + " daylight openings of the first bay, rows, floors, overall."));
    notes.forEach(note -> said.add(Panel.Row.of(note)));
    panels.add(new Panel("Notes", said));
    panels.removeIf(panel -> panel.rows().isEmpty());
    return panels;
  }

  static List<Panel> with(Panel first, List<Panel> rest) {
    List<Panel> all = new ArrayList<>();
    all.add(first);
    all.addAll(rest);
    return all;
  }

  /** Which part of the whole a sheet shows. */
  static Panel key(Parts parts, int at) {
    int columns = parts.columns();
    int storeys = parts.windows().size() / columns;
    double cell = Math.min(8, Math.min(56.0 / columns, 40.0 / storeys));
    Consumer<Surface> plan =
        surface -> {
          for (int i = 0; i < parts.windows().size(); i++) {
            double x = -5 + i % columns * cell;
            double y = (i / columns - storeys / 2.0) * cell;
            surface.box(
                new Box(x, y, x + cell, y + cell),
                i == at ? Pen.EDGE : Pen.THIN,
                i == at ? Tone.SPANDREL : null);
            surface.text(
                Integer.toString(i + 1),
                x + cell / 2,
                y + cell / 2 - 1.25,
                i == at ? Lettering.NOTE.in(Tone.INK) : Lettering.NOTE.in(Tone.SOFT),
                Align.CENTRE);
          }
        };
    return new Panel("Parts", List.of(new Panel.Row(plan, storeys * cell, "")));
  }

  private static List<Panel.Row> glass(WallLayout layout) {
    TreeMap<String, Cell> kinds = new TreeMap<>();
    for (Cell cell : layout.cells()) {
      if (cell.opening().isEmpty() && cell.use().isPresent()) {
        kinds.putIfAbsent(cell.use().get().glass().value(), cell);
      }
    }
    List<Panel.Row> rows = new ArrayList<>();
    kinds.forEach(
        (name, cell) ->
            rows.add(new Panel.Row(surface -> swatch(surface, cell), words(name, cell))));
    return rows;
  }

  private static String words(String name, Cell cell) {
    String kind = cell.use().orElseThrow().vision() ? "vision" : "spandrel";
    boolean safety =
        cell.glass().map(Part.Glass::safety).filter(given -> given.value()).isPresent();
    return name + ", " + kind + (safety ? ", safety rated" : "");
  }

  private static void swatch(Surface surface, Cell cell) {
    boolean vision = cell.use().orElseThrow().vision();
    surface.box(SWATCH, null, vision ? Tone.GLASS : Tone.SPANDREL);
    if (vision) {
      Lites.light(surface, SWATCH);
    } else {
      surface.hatch(SWATCH.corners(), Hatch.SPANDREL, List.of());
    }
    surface.box(SWATCH, Pen.THIN, null);
  }

  private static List<Panel.Row> signs(WallLayout layout) {
    List<Panel.Row> rows = new ArrayList<>();
    Set<AnchorUse.Kind> kinds = EnumSet.noneOf(AnchorUse.Kind.class);
    layout.anchors().forEach(anchor -> kinds.add(anchor.use().kind()));
    for (AnchorUse.Kind kind : kinds) {
      rows.add(new Panel.Row(surface -> surface.symbol(Anchors.symbol(kind), 0, 0), meaning(kind)));
    }
    if (!layout.splices().isEmpty()) {
      rows.add(new Panel.Row(Legends::splice, "splice: open joint of a vertical"));
    }
    if (layout.wall().grid().floors().stream().anyMatch(floor -> floor.slab().isPresent())) {
      rows.add(
          new Panel.Row(
              surface -> surface.line(-4.5, 0, 4.5, 0, Pen.HIDDEN), "slab behind the wall"));
    }
    Set<Grid.OpeningKind> openings = EnumSet.noneOf(Grid.OpeningKind.class);
    layout.wall().grid().openings().forEach(opening -> openings.add(opening.kind()));
    if (!openings.isEmpty()) {
      rows.add(
          new Panel.Row(
              surface -> surface.line(-4.5, 0, 4.5, 0, Pen.OTHERS), "opening, filled by others"));
    }
    return rows;
  }

  private static String meaning(AnchorUse.Kind kind) {
    return switch (kind) {
      case DEAD_LOAD -> "dead-load anchor: carries weight and wind";
      case WIND_LOAD -> "wind-load anchor: slides up and down";
      case CLIP -> "clip: holds in and out";
    };
  }

  private static void splice(Surface surface) {
    surface.box(new Box(-0.8, -2.8, 0.8, 2.8), null, Tone.METAL);
    surface.line(-0.8, -2.8, -0.8, 2.8, Pen.FINE_EDGE);
    surface.line(0.8, -2.8, 0.8, 2.8, Pen.FINE_EDGE);
    surface.line(-2.2, 0.25, 2.2, 0.25, Pen.FINE_EDGE);
    surface.line(-2.2, -0.25, 2.2, -0.25, Pen.FINE_EDGE);
    surface.polygon(new double[] {2.5, 0, 4.3, 1, 4.3, -1}, null, Tone.INK);
  }
}
