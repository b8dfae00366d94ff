package mullwright.drawing.detail;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import mullwright.drawing.Arrangement;
import mullwright.drawing.Box;
import mullwright.drawing.Drawing;
import mullwright.drawing.Figures;
import mullwright.drawing.Panel;
import mullwright.drawing.Paper;
import mullwright.drawing.Scale;
import mullwright.drawing.Sheet;
import mullwright.drawing.TitleBlock;
import mullwright.layout.Cell;
import mullwright.layout.Glazed;
import mullwright.layout.SpliceJoint;
import mullwright.layout.SystemPart;
import mullwright.layout.WallLayout;
import mullwright.model.Part;
import mullwright.quantity.UnitSystem;

/** The details of a wall on sheets: each joint that differs once, then each kind of splice. */
public final class DetailSheets {
  private static final double LARGEST = 2;
  private static final double SMALLEST = 5;
  private static final double GAP = 12;
  private static final double ROW = 700;

  private DetailSheets() {}

  /** The sheets. */
  public static List<Sheet> of(
      WallLayout layout, UnitSystem units, Paper paper, TitleBlock titleBlock) {
    Arrangement arrangement = new Arrangement(paper, titleBlock, "Details", GAP);
    return arrangement.sheets(
        fitting(layout, units, arrangement), List.of(glass(layout, units), notes(layout, units)));
  }

  /** The details at half size without a sheet, side by side. */
  public static Drawing uncut(WallLayout layout, UnitSystem units) {
    Scale half =
        Scale.usual(units).stream().filter(it -> it.ratio() == LARGEST).findFirst().orElseThrow();
    return Arrangement.board("Details " + layout.wall().name(), at(layout, units, half), ROW, GAP);
  }

  // the largest usual scale at which each finds room
  private static List<Drawing> fitting(
      WallLayout layout, UnitSystem units, Arrangement arrangement) {
    Box room = arrangement.room();
    List<Drawing> drawings = List.of();
    for (Scale scale : Scale.usual(units)) {
      if (scale.ratio() < LARGEST || scale.ratio() > SMALLEST) {
        continue;
      }
      drawings = at(layout, units, scale);
      if (drawings.stream()
          .map(Drawing::extent)
          .allMatch(it -> it.width() <= room.width() && it.height() <= room.height())) {
        break;
      }
    }
    return drawings;
  }

  /** All details at a scale, numbered from 1. */
  static List<Drawing> at(WallLayout layout, UnitSystem units, Scale scale) {
    Figures figures = new Figures(units);
    List<Drawing> drawings = new ArrayList<>();
    for (Joint joint : Joints.of(layout)) {
      drawings.add(new SectionDetail(joint, drawings.size() + 1, scale, figures));
    }
    for (SpliceDetail.Splice splice : splices(layout)) {
      drawings.add(new SpliceDetail(splice, drawings.size() + 1, scale, figures));
    }
    return drawings;
  }

  private static List<SpliceDetail.Splice> splices(WallLayout layout) {
    Map<Object, SpliceDetail.Splice> found = new LinkedHashMap<>();
    for (SpliceJoint joint : layout.splices()) {
      Part.Profile profile = layout.verticals().get(joint.below()).profile();
      Optional<Part.Sleeve> sleeve = SystemPart.sleeve(layout, joint);
      found
          .computeIfAbsent(
              List.of(
                  profile.name(),
                  joint.splice().gap().value(),
                  sleeve.map(Part.Sleeve::name).orElse("")),
              any ->
                  new SpliceDetail.Splice(
                      profile,
                      SystemPart.backOf(layout, profile),
                      joint.splice().gap().value(),
                      sleeve,
                      new ArrayList<>()))
          .places()
          .add(joint.name());
    }
    return List.copyOf(found.values());
  }

  // from outdoors, as the catalog tells it
  private static Panel glass(WallLayout layout, UnitSystem units) {
    Figures figures = new Figures(units);
    Map<String, Panel.Row> rows = new TreeMap<>();
    for (Cell cell : layout.cells()) {
      if (Glazed.lite(cell) && cell.glass().isPresent()) {
        Part.Glass glass = cell.glass().get();
        rows.computeIfAbsent(
            glass.name(),
            name ->
                Panel.Row.of(
                    name
                        + ", from outdoors: "
                        + glass.layers().stream()
                            .map(layer -> words(layer, figures))
                            .collect(Collectors.joining("; "))
                        + "."));
      }
    }
    return new Panel("Glass", List.copyOf(rows.values()));
  }

  private static String words(Part.Layer layer, Figures figures) {
    String thickness = figures.of(layer.thickness()) + " ";
    return layer.words().isEmpty()
        ? thickness + layer.what()
        : thickness + String.join(" ", layer.words());
  }

  private static Panel notes(WallLayout layout, UnitSystem units) {
    List<Panel.Row> rows = new ArrayList<>();
    rows.add(
        Panel.Row.of(
            units == UnitSystem.US
                ? "Dimensions in feet and inches, to 1/16\"."
                : "Dimensions in millimetres."));
    rows.add(
        Panel.Row.of(
            "Members are drawn by the outlines of the catalog, the metal between the lites by what"
                + " bite and edge clearance leave."));
    rows.add(
        Panel.Row.of(
            "Drawn without a size, since the catalog states none: gaskets, edge seals, depth of"
                + " plates and caps, backer rods."));
    rows.add(Panel.Row.of("Glass of other plies but the same thickness is detailed alike."));
    boolean corner = !layout.wall().grid().corners().isEmpty();
    if (corner) {
      rows.add(Panel.Row.of("Corners are not detailed: the catalog does not tell how they turn."));
    }
    return new Panel("Notes", rows);
  }
}
