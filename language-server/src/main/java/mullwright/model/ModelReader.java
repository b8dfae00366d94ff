package mullwright.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import mullwright.syntax.ParsedFile;

/**
 * Reads a file and all it uses to a {@link Model}. Never throws, whatever the text: what is wrong
 * is among the model's problems.
 */
public final class ModelReader {
  private final FileReading main;
  private final Sources sources;
  private final ModelMemory memory;
  private final Collector collector = new Collector();

  private ModelReader(FileReading main, Sources sources, ModelMemory memory) {
    this.main = main;
    this.sources = sources;
    this.memory = memory;
  }

  /**
   * Reads the file at that place.
   *
   * @param path workspace path, {@code /} between folders
   * @param sources where the file and those it uses are found; a file that is not there is an empty
   *     one
   * @param memory what was kept of earlier readings in the same workspace
   */
  public static Model read(String path, Sources sources, ModelMemory memory) {
    ParsedFile file = sources.find(path).orElseGet(() -> ParsedFile.parse(""));
    return new ModelReader(memory.reading(path, file), sources, memory).read();
  }

  private Model read() {
    Library library = new UseReader(sources, memory, collector).read(main);
    for (FileReading file : library.all()) {
      collector.addAll(file.facts());
    }
    CatalogMerge catalog = memory.merged(main.path(), library);
    collector.addAll(catalog.facts());
    catalog.twice().forEach(twice -> nameFromTwo(library, twice));
    ProjectCriteria criteria = new ProjectCriteria(collector);
    Optional<Model.Project> project = project(library, criteria);
    List<Symbol> lets = new ArrayList<>(main.lets());
    List<Wall> walls = new ArrayList<>();
    for (WallReading wall : walls(library, catalog, criteria)) {
      collector.addAll(wall.facts());
      criteria.unfound(wall.unfound());
      walls.add(wall.wall());
      lets.addAll(wall.lets());
    }
    criteria.finish();
    List<Remarked> remarks = new ArrayList<>();
    library.all().forEach(file -> remarks.addAll(file.remarks()));
    List<Reference> references = ordered(library);
    return new Model(
        main.path(),
        library.used().stream().map(FileReading::path).toList(),
        project,
        catalog.catalog(),
        walls,
        references,
        unused(references, lets),
        remarks,
        collector.problems());
  }

  /** Its walls, those taken over that read as they did the last time. */
  private List<WallReading> walls(Library library, CatalogMerge catalog, ProjectCriteria criteria) {
    Surroundings around = Surroundings.of(library);
    List<WallReading> known = memory.walls(main.path(), around);
    List<WallReading> walls = new ArrayList<>();
    for (FileReading.Block wall : main.walls().values()) {
      walls.add(
          known.stream()
              .filter(before -> before.holdsFor(wall.statement()))
              .findFirst()
              .orElseGet(() -> read(wall, library, catalog, criteria, around)));
    }
    memory.remember(main.path(), around, walls);
    return walls;
  }

  private WallReading read(
      FileReading.Block wall,
      Library library,
      CatalogMerge catalog,
      ProjectCriteria criteria,
      Surroundings around) {
    Collector facts = new Collector();
    WallText text = WallText.of(library, main, wall, facts);
    ReadSteps steps =
        text.standsAlone() ? memory.steps(main.path(), around, text.name()) : new ReadSteps();
    WallReader reader = new WallReader(text, catalog, criteria, facts, steps);
    Wall read = reader.read();
    return new WallReading(
        wall.statement(), text.isLike(), read, text.lets(), facts, reader.unfound());
  }

  private Optional<Model.Project> project(Library library, ProjectCriteria criteria) {
    List<FileReading> from = new ArrayList<>(library.used());
    from.add(main);
    FileReading last = null;
    for (FileReading file : from) {
      if (!file.projects().isEmpty()) {
        if (last != null && file != main) {
          twoProjects(library, last, file);
        }
        criteria.add(file, file.projects().get(0));
        last = file;
      }
    }
    if (last == null) {
      return Optional.empty();
    }
    FileReading.Block block = last.projects().get(0);
    Properties lines =
        new Properties(
            PartSchema.project(),
            new Properties.Reading(block.spot(), last.scope(), collector, new ArrayList<>()),
            block.origin());
    lines.read(FileReader.inside(block.statement()));
    return Optional.of(
        new Model.Project(
            block.name().text(),
            lines.word("revision"),
            criteria.alone(block.origin()),
            block.origin()));
  }

  private void twoProjects(Library library, FileReading one, FileReading other) {
    String name = other.projects().get(0).name().text();
    for (FileReading file : List.of(one, other)) {
      collector.problem(
          new ModelProblem.NameFromTwo(
              "project", name, one.path(), other.path(), library.via().get(file.path())));
    }
  }

  /** One name from two catalogs is an error at both uses; in the main file at the part itself. */
  private void nameFromTwo(Library library, CatalogMerge.Twice twice) {
    String one = twice.first().origin().file();
    String other = twice.second().origin().file();
    for (Part part : List.of(twice.first(), twice.second())) {
      Origin origin = library.via().getOrDefault(part.origin().file(), part.origin());
      collector.problem(
          new ModelProblem.NameFromTwo(part.kind().spelling(), part.name(), one, other, origin));
    }
  }

  private List<Reference> ordered(Library library) {
    Map<String, Integer> order = new HashMap<>();
    for (FileReading file : library.all()) {
      order.put(file.path(), order.size());
    }
    List<Reference> sorted = collector.references();
    sorted.sort((one, other) -> compare(one.origin(), other.origin(), order));
    List<Reference> references = new ArrayList<>(sorted.size());
    for (Reference each : sorted) {
      if (!endsWith(references, each)) {
        references.add(each);
      }
    }
    return references;
  }

  /** True if it is among the last ones, those of its place. */
  private static boolean endsWith(List<Reference> references, Reference each) {
    for (int i = references.size() - 1; i >= 0; i--) {
      Reference before = references.get(i);
      if (!before.origin().equals(each.origin())) {
        return false;
      }
      if (before.equals(each)) {
        return true;
      }
    }
    return false;
  }

  // thousands at every edit, nearly all of one file
  private static int compare(Origin one, Origin other, Map<String, Integer> order) {
    if (!one.file().equals(other.file())) {
      int files = order.getOrDefault(one.file(), 0) - order.getOrDefault(other.file(), 0);
      if (files != 0) {
        return files;
      }
    }
    return Origin.inFile(one, other);
  }

  private List<Symbol> unused(List<Reference> references, List<Symbol> lets) {
    Set<Symbol> unused = new LinkedHashSet<>();
    for (Symbol let : lets) {
      if (let.definition().file().equals(main.path())) {
        unused.add(let);
      }
    }
    if (!main.walls().isEmpty()) {
      for (Map<String, Part> named : main.parts().values()) {
        named
            .values()
            .forEach(part -> unused.add(CatalogReader.symbol(part.name(), part.origin())));
      }
    }
    for (Reference reference : references) {
      if (unused.isEmpty()) {
        break;
      }
      if (!reference.definition()) {
        unused.remove(reference.symbol());
      }
    }
    return new ArrayList<>(unused);
  }
}
