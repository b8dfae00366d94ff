package mullwright.workspace;

import java.lang.ref.SoftReference;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import mullwright.analysis.lite.GlassMemory;
import mullwright.analysis.wall.BeamMemory;
import mullwright.check.Checker;
import mullwright.model.ModelMemory;

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
  private final ModelMemory models = new ModelMemory();
  private final BeamMemory beams = new BeamMemory();
  private final GlassMemory glass = new GlassMemory();

  Memory(Checker checker) {
    this.checker = checker;
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
