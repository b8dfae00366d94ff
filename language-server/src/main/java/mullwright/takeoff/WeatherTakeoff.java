package mullwright.takeoff;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import mullwright.layout.Cell;
import mullwright.layout.CoverPiece;
import mullwright.layout.Glazed;
import mullwright.layout.PlateHoles;
import mullwright.layout.RowPieces;
import mullwright.layout.SystemPart;
import mullwright.layout.WallLayout;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.quantity.Length;

/**
 * Counts what keeps the weather out: gaskets, zone dams, plate fasteners, the seal round the frame.
 *
 * <p>Gaskets are cut long by 1/8" a foot, each edge of each opening indoors and outdoors; zone dams
 * stand at both ends of each horizontal with a lite above it (common practice).
 */
final class WeatherTakeoff {
  /** Zone dams of a horizontal: one at each end. */
  private static final int DAMS = 2;

  private final WallLayout layout;
  private final Faces faces;
  private final Tally tally;
  private final Map<Tally.Thing, Edges> edgesOf = new LinkedHashMap<>();

  /** So many edges of openings; cut long together, so that nothing is rounded on the way. */
  private record Edges(long count, Length length) {
    Edges plus(Edges other) {
      return new Edges(count + other.count, length.plus(other.length));
    }
  }

  WeatherTakeoff(WallLayout layout, Faces faces, Tally tally) {
    this.layout = layout;
    this.faces = faces;
    this.tally = tally;
  }

  void count() {
    fasteners();
    Map<String, Given<String>> gaskets =
        layout.wall().system().map(Part.WallSystem::gaskets).orElse(Map.of());
    for (Cell cell : layout.cells()) {
      if (Glazed.pocket(cell)) {
        gasket(cell, "outdoor", gaskets);
        gasket(cell, "indoor", gaskets);
      }
    }
    edgesOf.forEach(
        (thing, edges) ->
            tally.length(thing, edges.count(), Gaskets.cut(edges.length()), Optional.empty()));
    dams();
    seal();
  }

  private void fasteners() {
    for (CoverPiece cover : layout.covers()) {
      int count = PlateHoles.count(layout, cover);
      if (count > 0) {
        String fastener =
            SystemPart.of(layout, PartKind.PRESSURE_PLATE, Part.PressurePlate.class)
                .flatMap(plate -> PlateHoles.fastener(layout, plate))
                .orElse("");
        tally.count(thing("fastener", faces.of(cover), "plate fastener", fastener, ""), count);
      }
    }
  }

  private void gasket(Cell cell, String side, Map<String, Given<String>> gaskets) {
    String part =
        Optional.ofNullable(gaskets.get(side))
            .or(() -> Optional.ofNullable(gaskets.get("")))
            .map(Given::value)
            .orElse("");
    String remark = cell.rectangular() ? "" : "sloped lites by their bounding size, not checked";
    Length edges = cell.daylightWidth().plus(cell.daylightHeight()).times(2);
    edgesOf.merge(
        thing("gasket", faces.of(cell), "gasket, " + side, part, remark),
        new Edges(Gaskets.EDGES, edges),
        Edges::plus);
  }

  private void dams() {
    RowPieces rows = RowPieces.of(layout);
    Set<Integer> dammed = new HashSet<>();
    String dam =
        layout
            .wall()
            .system()
            .flatMap(system -> Optional.ofNullable(system.parts().get(PartKind.ZONE_DAM)))
            .map(Given::value)
            .orElse("");
    for (Cell cell : layout.cells()) {
      if (!Glazed.pocket(cell) || cell.below() < 0) {
        continue;
      }
      for (int bay = cell.firstBay(); bay <= cell.lastBay(); bay++) {
        rows.in(cell.below(), bay)
            .filter(piece -> dammed.add(piece.index()))
            .ifPresent(
                piece ->
                    tally.count(thing("zone-dam", faces.of(piece), "zone dam", dam, ""), DAMS));
      }
    }
  }

  private void seal() {
    String sealant =
        layout
            .wall()
            .system()
            .flatMap(system -> Optional.ofNullable(system.parts().get(PartKind.SEALANT)))
            .map(Given::value)
            .orElse("");
    PerimeterSeal seal = PerimeterSeal.of(layout);
    Length[] lengths = seal.byFace(faces);
    for (int face = 0; face < lengths.length; face++) {
      Length both = lengths[face].times(2);
      if (both.signum() > 0) {
        tally.length(
            new Tally.Thing(
                Phase.WEATHER,
                "sealant",
                face,
                "perimeter seal, both sides",
                sealant,
                seal.size(),
                seal.remark()),
            1,
            both,
            Optional.empty());
        tally.length(
            new Tally.Thing(
                Phase.WEATHER,
                "backer-rod",
                face,
                "backer rod, both sides",
                "",
                seal.rod(),
                "25 % over the joint width (common practice)"),
            1,
            both,
            Optional.empty());
      }
    }
  }

  private static Tally.Thing thing(String sort, int face, String item, String part, String remark) {
    return new Tally.Thing(Phase.WEATHER, sort, face, item, part, "", remark);
  }
}
