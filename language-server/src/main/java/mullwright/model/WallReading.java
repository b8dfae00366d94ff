package mullwright.model;

import java.util.List;
import mullwright.syntax.Statement;

/**
 * One wall as read, with all that reading it told; holds as long as its own statement and all
 * around it are the very same.
 *
 * @param statement the wall's block
 * @param like true if another wall's text went into it
 * @param wall what it came to
 * @param lets of the wall and those it is like
 * @param facts problems and references of it
 * @param unfound what is wrong with places the projects name, as this wall sees them
 */
record WallReading(
    Statement statement,
    boolean like,
    Wall wall,
    List<Symbol> lets,
    Collector facts,
    List<ModelProblem> unfound) {
  WallReading {
    lets = List.copyOf(lets);
    unfound = List.copyOf(unfound);
  }

  /** True if that block reads the same, all around it being the same. */
  boolean holdsFor(Statement now) {
    return !like && statement == now;
  }
}
