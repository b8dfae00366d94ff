package mullwright.report;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import mullwright.analysis.wall.FaceTransmittance;
import mullwright.model.Given;
import mullwright.quantity.Kind;
import mullwright.quantity.Quantity;
import mullwright.quantity.Unit;
import mullwright.quantity.UnitSystem;

/**
 * Thermal transmittance of each face of a wall by the component assessment method of ISO 12631.
 *
 * <p>Tables: the faces with their results, left to right; then for each what went into it, areas of
 * glass and frame and edges of glass. What the catalog does not state is told, never assumed.
 */
@AutoService(Report.class)
public final class TransmittanceReport implements Report {
  private static final String NOT_STATED = "not stated";

  @Override
  public String name() {
    return "transmittance";
  }

  @Override
  public Document make(List<WallAtHand> walls, Options options) {
    return new Document(
        name(),
        "Thermal transmittance",
        walls.stream().map(TransmittanceReport::section).toList(),
        List.of(
            "By the component assessment method, ISO 12631 (from memory): (sum of U × area + sum of"
                + " Ψ × length) ÷ area. Air leakage, anchors, corners and sun are not in it.",
            Caution.WORDS));
  }

  private static Document.Section section(WallAtHand wall) {
    List<FaceTransmittance> faces = FaceTransmittance.of(wall.facts().layout());
    String name = wall.facts().wall().name();
    List<Table> tables = new ArrayList<>();
    tables.add(results(faces, wall.units()));
    tables.add(areas(faces, wall.units()));
    tables.add(edges(faces, wall.units()));
    tables.removeIf(table -> table.rows().isEmpty());
    return new Document.Section("Wall " + name, wall.file(), name, warnings(wall, faces), tables);
  }

  private static List<String> warnings(WallAtHand wall, List<FaceTransmittance> faces) {
    List<String> warnings = new ArrayList<>();
    if (wall.errors() > 0) {
      warnings.add(
          (wall.errors() == 1 ? "1 error stands" : wall.errors() + " errors stand")
              + " in this wall, so areas may be wrong or missing. Run “mullwright check "
              + wall.file()
              + "” and mend them first.");
    }
    Set<String> lacking = new LinkedHashSet<>();
    int sloped = 0;
    int leftOut = 0;
    for (FaceTransmittance face : faces) {
      face.areas().stream()
          .filter(area -> area.transmittance().isEmpty())
          .forEach(area -> lacking.add("U of " + area.part()));
      face.edges().stream()
          .filter(edge -> edge.transmittance().isEmpty())
          .forEach(edge -> lacking.add("edge-psi of " + edge.part()));
      sloped += face.notRectangular();
      leftOut += face.leftOut();
    }
    if (!lacking.isEmpty()) {
      warnings.add(
          "Without a result, since the catalog does not state: "
              + String.join(", ", lacking)
              + ". They come from the maker, a simulation or a test, and are not assumed.");
    }
    if (sloped > 0) {
      warnings.add(sloped + " lites that are no rectangle are counted by their bounding size.");
    }
    if (leftOut > 0) {
      warnings.add(leftOut + (leftOut == 1 ? " opening" : " openings") + " by others left out.");
    }
    return warnings;
  }

  private static Table results(List<FaceTransmittance> faces, UnitSystem units) {
    List<List<Entry>> rows = new ArrayList<>();
    for (FaceTransmittance face : faces) {
      rows.add(
          List.of(
              face(face),
              amount(face.area(), Kind.AREA),
              face.result()
                  .map(result -> amount(result.transmittance(), Kind.U_FACTOR))
                  .orElse(Entry.NONE),
              Entry.text(face.result().isPresent() ? "" : NOT_STATED)));
    }
    return new Table(
        "faces",
        "Transmittance by face",
        List.of(
            Column.text("face", "Face"),
            Column.amount("area", "Area", area(units)),
            Column.amount("transmittance", "U", uFactor(units)),
            Column.text("remark", "Remark")),
        rows,
        List.of());
  }

  private static Table areas(List<FaceTransmittance> faces, UnitSystem units) {
    List<List<Entry>> rows = new ArrayList<>();
    for (FaceTransmittance face : faces) {
      for (FaceTransmittance.Area area : face.areas()) {
        rows.add(
            List.of(
                face(face),
                Entry.text(area.kind()),
                Entry.text(area.part()),
                amount(area.area(), Kind.AREA),
                stated(area.transmittance()),
                remark(area.transmittance())));
      }
    }
    return new Table(
        "areas",
        "Glass and frame, visible areas",
        List.of(
            Column.text("face", "Face"),
            Column.text("kind", "Kind"),
            Column.text("part", "Part"),
            Column.amount("area", "Area", area(units)),
            Column.amount("transmittance", "U", uFactor(units)),
            Column.text("remark", "Remark")),
        rows,
        List.of());
  }

  private static Table edges(List<FaceTransmittance> faces, UnitSystem units) {
    List<List<Entry>> rows = new ArrayList<>();
    Unit length = units == UnitSystem.US ? Unit.FOOT : Unit.METRE;
    for (FaceTransmittance face : faces) {
      for (FaceTransmittance.Edge edge : face.edges()) {
        rows.add(
            List.of(
                face(face),
                Entry.text(edge.part()),
                amount(edge.length(), Kind.LENGTH),
                stated(edge.transmittance()),
                remark(edge.transmittance())));
      }
    }
    return new Table(
        "edges",
        "Edges of glass, visible lengths",
        List.of(
            Column.text("face", "Face"),
            Column.text("part", "Glass"),
            Column.amount("length", "Length", length),
            Column.amount(
                "transmittance",
                "Ψ",
                units == UnitSystem.US
                    ? Unit.BTU_PER_HOUR_FOOT_FAHRENHEIT
                    : Unit.WATT_PER_METRE_KELVIN),
            Column.text("remark", "Remark")),
        rows,
        List.of());
  }

  private static Entry face(FaceTransmittance face) {
    return Entry.text(face.name().isEmpty() ? "whole wall" : face.name());
  }

  private static Entry stated(Optional<Given<Quantity>> given) {
    return given.<Entry>map(stated -> new Entry.Amount(stated.value())).orElse(Entry.NONE);
  }

  private static Entry remark(Optional<Given<Quantity>> given) {
    return Entry.text(given.isPresent() ? "" : NOT_STATED);
  }

  private static Entry amount(double si, Kind kind) {
    return new Entry.Amount(Quantity.ofSi(si, kind));
  }

  private static Unit area(UnitSystem units) {
    return units == UnitSystem.US ? Unit.SQUARE_FOOT : Unit.SQUARE_METRE;
  }

  private static Unit uFactor(UnitSystem units) {
    return units == UnitSystem.US
        ? Unit.BTU_PER_HOUR_SQUARE_FOOT_FAHRENHEIT
        : Unit.WATT_PER_SQUARE_METRE_KELVIN;
  }
}
