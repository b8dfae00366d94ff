package mullwright.model;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import mullwright.syntax.ParsedFile;

/**
 * What is worth keeping from one reading to the next, for one workspace: how each file reads by
 * itself, as long as it is the very same {@link ParsedFile}, and how catalogs read together.
 *
 * <p>It changes no result, only the time it takes. It may be shared between threads.
 */
public final class ModelMemory {
  private final Map<String, FileReading> readings = new HashMap<>();
  private final Map<String, CatalogMerge> merges = new HashMap<>();
  private final Map<String, Walls> walls = new HashMap<>();
  private final Map<String, Map<String, ReadSteps>> steps = new HashMap<>();

  /** The walls of a file as last read, and among what. */
  private record Walls(Surroundings around, List<WallReading> all) {}

  /** The file as it reads by itself. */
  synchronized FileReading reading(String path, ParsedFile file) {
    FileReading known = readings.get(path);
    if (known == null || known.file() != file) {
      known = FileReader.read(path, file);
      readings.put(path, known);
    }
    return known;
  }

  /** The catalogs of those files read together; asked for by the same main file again and again. */
  synchronized CatalogMerge merged(String main, Library library) {
    List<FileReading> files = library.catalogs();
    CatalogMerge known = merges.get(main);
    if (known == null || !known.isOf(files, library.isComplete())) {
      known = CatalogMerge.of(files, library.isComplete());
      merges.put(main, known);
    }
    return known;
  }

  /** The walls of that file as last read, if they were read among the very same. */
  synchronized List<WallReading> walls(String main, Surroundings around) {
    Walls known = walls.get(main);
    return known != null && known.around.isSame(around) ? known.all : List.of();
  }

  /** What is remembered of a wall that is read again among the very same; else nothing yet. */
  synchronized ReadSteps steps(String main, Surroundings around, String wall) {
    Walls known = walls.get(main);
    if (known == null || !known.around.isSame(around)) {
      steps.remove(main);
    }
    return steps
        .computeIfAbsent(main, any -> new HashMap<>())
        .computeIfAbsent(wall, any -> new ReadSteps());
  }

  synchronized void remember(String main, Surroundings around, List<WallReading> read) {
    walls.put(main, new Walls(around, List.copyOf(read)));
    Set<String> names = new HashSet<>();
    read.forEach(wall -> names.add(wall.wall().name()));
    steps.getOrDefault(main, new HashMap<>()).keySet().retainAll(names);
  }
}
