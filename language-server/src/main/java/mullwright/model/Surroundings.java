package mullwright.model;

import java.util.ArrayList;
import java.util.List;
import mullwright.syntax.Segment;
import mullwright.syntax.Statement;
import mullwright.syntax.StatementKind;

/**
 * All the texts a wall is read among, its own and the other walls' of its file left out: the used
 * files and what stands beside the walls. Two are equal if those texts are the very same objects.
 */
final class Surroundings {
  private final List<Object> parts = new ArrayList<>();

  private Surroundings() {}

  static Surroundings of(Library library) {
    Surroundings around = new Surroundings();
    around.parts.add(library.isComplete());
    // a wall may say the unit of its whole file
    around.parts.add(library.main().unit());
    around.parts.addAll(library.used());
    for (Segment segment : library.main().file().segments()) {
      around.parts.add(isWalls(segment) ? StatementKind.WALL_BLOCK : segment);
    }
    return around;
  }

  // what surrounds a wall must not change with it, but its number among the segments counts
  private static boolean isWalls(Segment segment) {
    if (segment.statements().isEmpty()) {
      return false;
    }
    for (Statement statement : segment.statements()) {
      if (statement.kind() != StatementKind.WALL_BLOCK) {
        return false;
      }
    }
    return true;
  }

  boolean isSame(Surroundings other) {
    if (parts.size() != other.parts.size()) {
      return false;
    }
    for (int i = 0; i < parts.size(); i++) {
      Object part = parts.get(i);
      if (part != other.parts.get(i)
          && !(part instanceof Boolean && part.equals(other.parts.get(i)))) {
        return false;
      }
    }
    return true;
  }
}
