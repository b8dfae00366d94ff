package mullwright.analysis.wall;

import java.util.LinkedHashMap;
import java.util.Map;
import mullwright.analysis.beam.BeamAnswer;
import mullwright.analysis.beam.BeamProblem;
import mullwright.analysis.beam.HingedBeam;

/**
 * Remembers solved beams by value: an edit that leaves a vertical's loads and supports as they were
 * solves nothing anew, and equal verticals are solved once.
 *
 * <p>Safe for use by several threads. Keeps the {@value #KEPT} beams used last.
 */
public final class BeamMemory {
  /** How many beams are kept. */
  public static final int KEPT = 4096;

  private final Map<BeamKey, BeamAnswer> answers =
      new LinkedHashMap<>(64, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<BeamKey, BeamAnswer> eldest) {
          return size() > KEPT;
        }
      };

  BeamAnswer solve(BeamProblem problem) {
    BeamKey key = BeamKey.of(problem);
    synchronized (answers) {
      BeamAnswer known = answers.get(key);
      if (known == null) {
        known = HingedBeam.solve(problem);
        answers.put(key, known);
      }
      return known;
    }
  }
}
