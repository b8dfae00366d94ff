package mullwright.workspace;

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
 * very same texts.
 */
final class Memory {
  private final Map<String, Reading> last = new ConcurrentHashMap<>();
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

  Reading last(String path) {
    return last.get(path);
  }

  void remember(String path, Reading reading) {
    last.put(path, reading);
  }
}
