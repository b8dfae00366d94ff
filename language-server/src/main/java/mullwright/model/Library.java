package mullwright.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The main file and all it uses, each once, in the order met.
 *
 * @param via by path, the {@code use} of the main file that leads to it
 * @param complete false if a use could not be followed: unknown parts are then no news
 */
record Library(
    FileReading main, List<FileReading> used, Map<String, Origin> via, boolean complete) {
  Library {
    used = List.copyOf(used);
    via = Map.copyOf(via);
  }

  boolean isComplete() {
    return complete;
  }

  /** The main file first. */
  List<FileReading> all() {
    List<FileReading> all = new ArrayList<>(used.size() + 1);
    all.add(main);
    all.addAll(used);
    return all;
  }

  /** Those that hold parts or name them. */
  List<FileReading> catalogs() {
    return all().stream()
        .filter(file -> !file.parts().isEmpty() || !file.mentions().isEmpty())
        .toList();
  }

  /** The wall of that name: of the given file first, then of any. */
  Optional<Found> wall(String name, FileReading first) {
    FileReading.Block own = first.walls().get(name);
    if (own != null) {
      return Optional.of(new Found(first, own));
    }
    for (FileReading file : all()) {
      FileReading.Block wall = file.walls().get(name);
      if (wall != null) {
        return Optional.of(new Found(file, wall));
      }
    }
    return Optional.empty();
  }

  /** A wall with the file it stands in. */
  record Found(FileReading file, FileReading.Block wall) {}

  /** The names of all walls. */
  List<String> wallNames() {
    Map<String, Boolean> names = new HashMap<>();
    List<String> ordered = new ArrayList<>();
    for (FileReading file : all()) {
      for (String name : file.walls().keySet()) {
        if (names.put(name, true) == null) {
          ordered.add(name);
        }
      }
    }
    return ordered;
  }
}
