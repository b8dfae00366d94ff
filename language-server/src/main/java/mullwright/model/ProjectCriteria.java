package mullwright.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;

/**
 * The criteria and shop rules of the projects, with each wall's own put over them.
 *
 * <p>A project names floors without knowing the walls. A name that some wall has is right; one that
 * no wall has is reported once all walls are read.
 */
final class ProjectCriteria {
  private final List<Layer> projects = new ArrayList<>();
  private final Collector collector;
  private final Map<Origin, Unfound> unfound = new LinkedHashMap<>();
  private int walls;

  /** A project's blocks as property lines. */
  private record Layer(Properties criteria, Properties fabrication) {}

  /** A name no wall read so far has. */
  private record Unfound(ModelProblem problem, int walls) {}

  ProjectCriteria(Collector collector) {
    this.collector = collector;
  }

  /** Puts a project over those before it. */
  void add(FileReading file, FileReading.Block project) {
    Properties.Reading reading =
        new Properties.Reading(project.spot(), file.scope(), collector, new ArrayList<>());
    Properties criteria = new Properties(PartSchema.criteria(), reading, project.origin());
    Properties fabrication = new Properties(PartSchema.fabrication(), reading, project.origin());
    for (Statement inside : FileReader.inside(project.statement())) {
      if (inside.kind() == StatementKind.CRITERIA_BLOCK) {
        criteria.read(FileReader.inside(inside));
      } else if (inside.kind() == StatementKind.FABRICATION_BLOCK) {
        fabrication.read(FileReader.inside(inside));
      }
    }
    projects.add(new Layer(criteria, fabrication));
  }

  /** What the projects ask by themselves; places that need a wall are left out. */
  Criteria alone(Origin takenFor) {
    CriteriaReader reader = new CriteriaReader(null);
    projects.forEach(layer -> reader.over(layer.criteria(), new Collector()));
    return reader.criteria(takenFor, new Collector());
  }

  /**
   * What the projects and the wall itself ask.
   *
   * @param into takes what is wrong and what is named
   * @param unfound takes what is wrong with places the projects name: no news as long as another
   *     wall has them
   */
  Criteria criteria(WallText wall, GridNames names, Collector into, List<ModelProblem> unfound) {
    CriteriaReader reader = new CriteriaReader(names);
    Collector places = new Collector();
    projects.forEach(layer -> reader.over(layer.criteria(), places));
    places.references().forEach(use -> into.names(use.symbol(), use.origin()));
    unfound.addAll(places.problems());
    for (Properties layer : own(wall, PartSchema.criteria(), StatementKind.CRITERIA_BLOCK, into)) {
      reader.over(layer, into);
    }
    return reader.criteria(wall.origin(), into);
  }

  /** Takes to account what a wall did not find. */
  void unfound(List<ModelProblem> problems) {
    walls++;
    for (ModelProblem problem : problems) {
      Unfound before = unfound.get(problem.origin());
      unfound.put(problem.origin(), new Unfound(problem, before == null ? 1 : before.walls() + 1));
    }
  }

  Fabrication fabrication(WallText wall, Collector into) {
    List<Properties> layers = new ArrayList<>();
    projects.forEach(layer -> layers.add(layer.fabrication()));
    layers.addAll(own(wall, PartSchema.fabrication(), StatementKind.FABRICATION_BLOCK, into));
    return FabricationReader.read(layers);
  }

  private static List<Properties> own(
      WallText wall, PartSchema schema, StatementKind kind, Collector into) {
    List<Properties> layers = new ArrayList<>();
    for (WallText.Layer layer : wall.layers()) {
      Properties lines = layer.properties(schema, into, wall.origin());
      layer.all(kind).forEach(said -> lines.read(FileReader.inside(said.statement())));
      layers.add(lines);
    }
    return layers;
  }

  /** Reports what the projects name and no wall has. */
  void finish() {
    for (Unfound name : unfound.values()) {
      if (name.walls() == walls) {
        collector.problem(name.problem());
      }
    }
  }
}
