package mullwright.workspace;

import java.lang.ref.SoftReference;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import mullwright.analysis.lite.GlassMemory;
import mullwright.analysis.wall.BeamMemory;
import mullwright.check.Checker;
import mullwright.model.ModelMemory;
import mullwright.model.Wall;

/**
 * What was computed last for each file, for the next snapshot to take over if it still holds.
 *
 * <p>It only ever saves work: a snapshot asks each remembered reading whether it was made from the
 * very same texts. Readings that nobody uses give way where memory is short, and are then made
 * anew.
 */
final class Memory {
  private final Map<String, SoftReference<Reading>> last = new ConcurrentHashMap<>();
  private final Checker checker;
  private final int wideBays;
  private final ModelMemory models = new ModelMemory();
  private final BeamMemory beams = new BeamMemory();
  private final GlassMemory glass = new GlassMemory();

  /**
   * Nothing remembered yet.
   *
   * @param wideBays walls of fewer bays are checked whole sooner than by portions
   */
  Memory(Checker checker, int wideBays) {
    this.checker = checker;
    this.wideBays = wideBays;
  }

  /** The same rules, with nothing remembered. */
  Memory emptied() {
    return new Memory(checker, wideBays);
  }

  /**
   * True if it is the very same wall, or another that says the same; of two wide walls that is not
   * asked, since to find out takes longer than it may save.
   */
  boolean isSame(Wall one, Wall other) {
    return one == other || !isWide(other) && one.equals(other);
  }

  /** True if it is checked around what changed sooner than whole. */
  boolean isWide(Wall wall) {
    return wall.grid().bays().size() >= wideBays;
  }

  Checker checker() {
    return checker;
  }

  ModelMemory models() {
    return models;
  }

  BeamMemory beams() {
    return beams;
  }

  GlassMemory glass() {
    return glass;
  }

  /** What was computed last for a file; null if nothing was, or if it gave way. */
  Reading last(String path) {
    SoftReference<Reading> known = last.get(path);
    return known == null ? null : known.get();
  }

  void remember(String path, Reading reading) {
    last.put(path, new SoftReference<>(reading));
  }
}
