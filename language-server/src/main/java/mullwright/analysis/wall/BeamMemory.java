package mullwright.analysis.wall;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Supplier;
import mullwright.analysis.beam.BeamProblem;
import mullwright.analysis.beam.HingedBeam;

/**
 * Remembers solved beams by value: an edit that leaves a member's loads and supports as they were
 * solves nothing anew, and equal members are solved once.
 *
 * <p>Safe for use by several threads. Keeps the {@value #KEPT} verticals and the {@value #KEPT}
 * horizontals used last.
 */
public final class BeamMemory {
  /** How many of each are kept. */
  public static final int KEPT = 4096;

  private final Map<BeamKey, SolvedBeam> beams = new Last<>();
  private final Map<HorizontalLoads.Key, HorizontalBeams> horizontals = new Last<>();

  private static final class Last<K, V> extends LinkedHashMap<K, V> {
    private static final long serialVersionUID = 1L;

    Last() {
      super(64, 0.75f, true);
    }

    @Override
    protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
      return size() > KEPT;
    }
  }

  SolvedBeam solve(BeamProblem problem) {
    return known(beams, BeamKey.of(problem), key -> new SolvedBeam(HingedBeam.solve(problem)));
  }

  HorizontalBeams solve(HorizontalLoads.Key key, Supplier<HorizontalLoads> loads) {
    return known(horizontals, key, any -> HorizontalBeams.of(loads.get()));
  }

  private static <K, V> V known(Map<K, V> memory, K key, Function<K, V> method) {
    synchronized (memory) {
      V known = memory.get(key);
      if (known == null) {
        known = method.apply(key);
        memory.put(key, known);
      }
      return known;
    }
  }
}
