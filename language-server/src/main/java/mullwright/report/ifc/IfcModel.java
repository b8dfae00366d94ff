package mullwright.report.ifc;

import java.util.ArrayList;
import java.util.List;
import mullwright.layout.WallLayout;
import mullwright.model.Grid;
import mullwright.model.Model;
import mullwright.quantity.Length;
import mullwright.report.Report;

/**
 * One wall as an IFC4 file.
 *
 * <p>Project, site, building, a storey for each floor, and in the lowest storey the curtain wall
 * made of its members, lites and anchors. The origin lies at the first line, in the outer face of
 * the glass, at the datum; the first face runs along X with the room towards positive Y. Lengths in
 * millimetres, areas, volumes and masses in SI units. Covers, gaskets, blocks and screws are not in
 * it: the catalog draws no shape of them.
 *
 * <p>Sources: ISO 16739-1 (IFC4), ISO 10303-21. The same wall gives the same bytes: identifiers
 * follow from names, and the time is told, not taken.
 */
public final class IfcModel {
  /** The time that stands in a file unless another is told; it says nothing. */
  public static final String NO_TIME = "1970-01-01T00:00:00";

  /** Attributes of a site, and of a building, after its composition type: all left open. */
  private static final int SITE_OPEN = 5;

  private static final int BUILDING_OPEN = 3;

  private final StepFile file = new StepFile();
  private final Report.WallAtHand wall;
  private final String project;
  private final GlobalIds ids;
  private final Shapes shapes;
  private final Descriptions told;

  private IfcModel(Report.WallAtHand wall) {
    this.wall = wall;
    String name = wall.facts().wall().name();
    this.project =
        wall.facts().text().model().project().map(Model.Project::name).orElse("Wall " + name);
    this.ids = new GlobalIds(project + "/" + name);
    this.shapes = new Shapes(file);
    this.told = new Descriptions(file, ids);
  }

  /**
   * The file of a wall.
   *
   * @param time when it was made, as ISO 8601 writes it: {@code 2026-05-04T10:30:00}
   */
  public static String of(Report.WallAtHand wall, String time) {
    return new IfcModel(wall).write(time);
  }

  private String write(String time) {
    WallLayout layout = wall.facts().layout();
    StepValue.Reference top = project();
    StepValue.Reference ground = shapes.placed(StepValue.NONE);
    StepValue.Reference site = spatial("IFCSITE", "Site", ground, SITE_OPEN);
    StepValue.Reference house = shapes.placed(ground);
    StepValue.Reference building = spatial("IFCBUILDING", "Building", house, BUILDING_OPEN);
    aggregate("site", top, List.of(site));
    aggregate("building", site, List.of(building));
    List<Length> elevations =
        layout.wall().grid().floors().stream().map(floor -> floor.elevation().value()).toList();
    List<StepValue.Reference> places =
        elevations.stream().map(height -> shapes.raised(house, height)).toList();
    List<StepValue.Reference> storeys = storeys(building, places);
    // what is contained in a storey is placed relative to it
    StepValue.Reference place =
        storeys.isEmpty()
            ? shapes.placed(house)
            : shapes.raised(places.get(0), elevations.get(0).negated());
    StepValue.Reference curtain =
        file.add(
            "IFCCURTAINWALL",
            ids.of("wall"),
            StepValue.NONE,
            StepValue.text(layout.wall().name()),
            StepValue.textOrNone(
                layout.wall().system().map(system -> "system " + system.name()).orElse("")),
            StepValue.NONE,
            place,
            StepValue.NONE,
            StepValue.NONE,
            StepValue.word("NOTDEFINED"));
    contain(curtain, storeys.isEmpty() ? List.of(building) : storeys);
    told.properties(
        curtain,
        "Pset_CurtainWallCommon",
        List.of(Descriptions.Fact.truth("IsExternal", external(layout))));
    told.properties(
        curtain,
        "Mullwright_Wall",
        List.of(
            Descriptions.Fact.label("Text", wall.file()),
            Descriptions.Fact.label("System", layout.wall().system().map(s -> s.name()).orElse("")),
            Descriptions.Fact.whole("Errors", wall.errors())));
    Parts parts = new Parts(file, ids, shapes, told, wall, place);
    List<StepValue.Reference> all = parts.add();
    if (!all.isEmpty()) {
      aggregate("parts", curtain, all);
    }
    told.write();
    return file.write(
        "ViewDefinition [notYetAssigned]",
        layout.wall().name() + ".ifc",
        time,
        "Mullwright",
        "IFC4");
  }

  /** True if the wall stands between indoors and outdoors. */
  static boolean external(WallLayout layout) {
    return !layout.wall().criteria().exposure().value().equals("indoor");
  }

  private StepValue.Reference project() {
    return file.add(
        "IFCPROJECT",
        ids.of("project"),
        StepValue.NONE,
        StepValue.text(project),
        wall.facts()
            .text()
            .model()
            .project()
            .flatMap(Model.Project::revision)
            .map(revision -> StepValue.text("revision " + revision.value()))
            .orElse(StepValue.NONE),
        StepValue.NONE,
        StepValue.NONE,
        StepValue.NONE,
        StepValue.list(shapes.context()),
        Units.of(file));
  }

  private StepValue.Reference spatial(String entity, String name, StepValue placement, int open) {
    List<StepValue> values = new ArrayList<>();
    values.add(ids.of(name));
    values.add(StepValue.NONE);
    values.add(StepValue.text(name));
    values.add(StepValue.NONE);
    values.add(StepValue.NONE);
    values.add(placement);
    values.add(StepValue.NONE);
    values.add(StepValue.NONE);
    values.add(StepValue.word("ELEMENT"));
    for (int at = 0; at < open; at++) {
      values.add(StepValue.NONE);
    }
    return file.add(entity, values.toArray(StepValue[]::new));
  }

  private List<StepValue.Reference> storeys(
      StepValue.Reference building, List<StepValue.Reference> places) {
    List<StepValue.Reference> storeys = new ArrayList<>();
    for (Grid.Floor floor : wall.facts().wall().grid().floors()) {
      Length elevation = floor.elevation().value();
      storeys.add(
          file.add(
              "IFCBUILDINGSTOREY",
              ids.of("floor " + floor.name()),
              StepValue.NONE,
              StepValue.text(floor.name()),
              StepValue.NONE,
              StepValue.NONE,
              places.get(floor.index()),
              StepValue.NONE,
              StepValue.NONE,
              StepValue.word("ELEMENT"),
              StepValue.real(elevation)));
    }
    if (!storeys.isEmpty()) {
      aggregate("storeys", building, storeys);
    }
    return storeys;
  }

  private void contain(StepValue.Reference curtain, List<StepValue.Reference> storeys) {
    file.add(
        "IFCRELCONTAINEDINSPATIALSTRUCTURE",
        ids.of("contained"),
        StepValue.NONE,
        StepValue.NONE,
        StepValue.NONE,
        StepValue.list(curtain),
        storeys.get(0));
    for (int at = 1; at < storeys.size(); at++) {
      file.add(
          "IFCRELREFERENCEDINSPATIALSTRUCTURE",
          ids.of("passes " + at),
          StepValue.NONE,
          StepValue.NONE,
          StepValue.NONE,
          StepValue.list(curtain),
          storeys.get(at));
    }
  }

  private void aggregate(String name, StepValue.Reference whole, List<StepValue.Reference> parts) {
    file.add(
        "IFCRELAGGREGATES",
        ids.of("aggregate " + name),
        StepValue.NONE,
        StepValue.NONE,
        StepValue.NONE,
        whole,
        StepValue.list(parts));
  }
}
