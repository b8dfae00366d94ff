package mullwright.preview;

import java.util.List;
import java.util.Optional;

/**
 * Draws what one page wants to see, in steps: what the eye waits for comes first.
 *
 * <p>Keeps what it drew last, so that what an edit leaves alone is not drawn anew. For one thread.
 */
final class Painter implements AutoCloseable {
  private final List<Step> steps;
  private final GitBase base = new GitBase();

  Painter(Opener opener, Tables tables) {
    this.steps =
        List.of(
            new DrawingStep(tables),
            new CursorStep(),
            new WallsStep(opener),
            new FindingStep(tables),
            new DiagramStep(tables),
            new BaseStep(tables, base),
            new SectionStep(tables),
            new TablesStep(tables, Tables.About.SCHEDULE, "schedule", "schedule"),
            new TablesStep(tables, Tables.About.CALCULATIONS, "calculations", "numbers"));
  }

  /** Draws some places of the page. */
  interface Step {
    /** The places as they are now; the very object of last time where nothing can have changed. */
    List<Slot> paint(Stage.Now now, Look look);

    /** What it draws, in words: {@code the elevation}. */
    String what();
  }

  List<Step> steps() {
    return steps;
  }

  @Override
  public void close() {
    base.close();
  }

  /** The wall a page looks at: the one it asked for, else the one last touched. */
  static Optional<SceneWall> wall(Scene scene, Stage.Now now, Look look) {
    return look.wall().isEmpty()
        ? scene.wall(now.followed())
        : scene.wall(look.wall()).or(() -> scene.wall(now.followed()));
  }
}
