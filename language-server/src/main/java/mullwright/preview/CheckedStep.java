package mullwright.preview;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A step that needs a wall checked; it draws anew only where something it needs is another. */
abstract class CheckedStep implements Painter.Step {
  private final Function<Look, Object> wants;
  private Object last;
  private List<Slot> drawn = List.of();

  /**
   * @param wants what of a page's wishes it heeds, beside the wall
   */
  CheckedStep(Function<Look, Object> wants) {
    this.wants = wants;
  }

  private record Need(Scene scene, String wall, Object wants) {
    /** Scenes are told apart by identity: each is made of other texts. */
    boolean same(Object other) {
      return other instanceof Need need
          && need.scene == scene
          && need.wall.equals(wall)
          && need.wants.equals(wants);
    }
  }

  @Override
  public final List<Slot> paint(Stage.Now now, Look look) {
    Optional<SceneWall> wall = Painter.wall(now.checked(), now, look);
    Need need = new Need(now.checked(), wall.map(SceneWall::id).orElse(""), wants.apply(look));
    if (!need.same(last)) {
      last = need;
      drawn = wall.map(found -> paint(found, look)).orElseGet(this::nothing);
    }
    return drawn;
  }

  /** The places of a wall whose facts and findings are known. */
  abstract List<Slot> paint(SceneWall wall, Look look);

  /** The same places where there is no wall. */
  abstract List<Slot> nothing();
}
