package mullwright.preview;

import java.util.List;
import java.util.Optional;

/**
 * The newest state, and those who wait for a newer one.
 *
 * <p>There is no queue: whoever is slow finds the newest state when it comes back. Safe for any
 * thread; nobody is kept waiting while something is drawn.
 */
final class Stage {
  private Now now =
      new Now(0, new Scene(List.of()), new Scene(List.of()), Optional.empty(), "", false);

  /**
   * One moment.
   *
   * @param serial grows with every change
   * @param scene the newest texts laid out
   * @param checked the newest texts whose findings are known
   * @param cursor where the editor's cursor was last seen
   * @param followed the wall last touched, by its name in the page
   * @param over true once there is nothing more to come
   */
  record Now(
      long serial,
      Scene scene,
      Scene checked,
      Optional<CursorAt> cursor,
      String followed,
      boolean over) {}

  /**
   * A cursor in a file.
   *
   * @param key of the file of the scene, or of one in the same snapshot
   * @param path of the file it stands in
   */
  record CursorAt(String key, String path, int offset) {}

  synchronized Now now() {
    return now;
  }

  synchronized void edited(Scene scene) {
    String followed = now.followed;
    if (scene.wall(followed).isEmpty() || lastTouchedHasWalls(scene, followed)) {
      followed = first(scene, followed);
    }
    change(new Now(now.serial + 1, scene, now.checked, now.cursor, followed, now.over));
  }

  private static boolean lastTouchedHasWalls(Scene scene, String followed) {
    if (scene.files().isEmpty()) {
      return false;
    }
    SceneFile last = scene.files().get(scene.files().size() - 1);
    return !last.details().isEmpty() && !followed.startsWith(last.key() + "#");
  }

  /** The first wall of the file last touched that has any. */
  private static String first(Scene scene, String otherwise) {
    for (int at = scene.files().size() - 1; at >= 0; at--) {
      List<SceneWall> walls = scene.files().get(at).walls();
      if (!walls.isEmpty()) {
        return walls.get(0).id();
      }
    }
    return otherwise;
  }

  synchronized void checked(Scene scene) {
    change(new Now(now.serial + 1, now.scene, scene, now.cursor, now.followed, now.over));
  }

  synchronized void cursor(CursorAt cursor) {
    String followed =
        now.scene.walls().stream()
            .filter(wall -> wall.file().key().equals(cursor.key))
            .filter(wall -> wall.file().path().equals(cursor.path))
            .filter(wall -> wall.holds(cursor.offset))
            .map(SceneWall::id)
            .findFirst()
            .orElse(now.followed);
    change(
        new Now(now.serial + 1, now.scene, now.checked, Optional.of(cursor), followed, now.over));
  }

  synchronized void end() {
    change(new Now(now.serial + 1, now.scene, now.checked, now.cursor, now.followed, true));
  }

  private void change(Now next) {
    now = next;
    notifyAll();
  }

  /** Wakes all who wait, as what they want may have changed. */
  synchronized void nudge() {
    notifyAll();
  }

  /** Waits until there is a newer state, or the patience is over, or somebody nudges. */
  synchronized Now await(long seen, long millis) throws InterruptedException {
    if (now.serial == seen) {
      wait(millis);
    }
    return now;
  }
}
