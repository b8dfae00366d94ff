package mullwright.cli;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Which walls are meant where the user names some. */
final class ChosenWalls {
  private ChosenWalls() {}

  /**
   * Those of the names, all of them if none is named.
   *
   * @param name of a wall
   * @param toDo what there is nothing to do for where there is no wall: {@code draw}
   * @throws CannotException if there is no wall, or none of a name
   */
  static <W> List<W> of(List<W> walls, List<String> names, Function<W, String> name, String toDo)
      throws CannotException {
    Set<String> known = new LinkedHashSet<>();
    walls.forEach(wall -> known.add(name.apply(wall)));
    for (String asked : names) {
      if (!known.contains(asked)) {
        throw new CannotException(
            "There is no wall “"
                + asked
                + "” in these files; there "
                + (known.isEmpty() ? "is none at all." : "are " + String.join(", ", known) + "."));
      }
    }
    if (walls.isEmpty()) {
      throw new CannotException(
          "No wall stands in these files, so there is nothing to " + toDo + ".");
    }
    return names.isEmpty()
        ? walls
        : walls.stream().filter(wall -> names.contains(name.apply(wall))).toList();
  }
}
