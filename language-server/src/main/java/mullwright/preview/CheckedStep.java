package mullwright.preview;

import java.util.List;
import java.util.Optional;

/**
 * A step that needs a wall checked; it draws anew only where something it needs is another, and
 * only what is seen.
 */
abstract class CheckedStep implements Painter.Step {
  private Need last;
  private List<Slot> drawn = List.of();

  /**
   * What a drawing follows from.
   *
   * @param basis told apart by identity
   */
  private record Need(Object basis, Object wishes) {
    boolean same(Need other) {
      return other != null && other.basis == basis && other.wishes.equals(wishes);
    }
  }

  @Override
  public final List<Slot> paint(Stage.Now now, Look look) {
    if (!seen(look)) {
      return drawn;
    }
    Optional<SceneWall> wall =
        Painter.wall(now.checked(), now, look).filter(found -> found.facts().isPresent());
    Need need =
        wall.map(found -> new Need(basis(found), wishes(found, look))).orElse(new Need(this, ""));
    if (!need.same(last)) {
      drawn = wall.map(found -> paint(found, look)).orElseGet(this::nothing);
      last = need;
    }
    return drawn;
  }

  /** What it follows from: as long as that is the very same, so is what is drawn. */
  abstract Object basis(SceneWall wall);

  /** What it heeds beside that: wishes of the page, numbers, words. */
  Object wishes(SceneWall wall, Look look) {
    return "";
  }

  /** True where its places can be seen. */
  boolean seen(Look look) {
    return true;
  }

  /** The places of a wall whose facts and findings are known. */
  abstract List<Slot> paint(SceneWall wall, Look look);

  /** The same places where there is no wall. */
  abstract List<Slot> nothing();
}
