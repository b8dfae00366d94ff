package mullwright.workspace;

import java.util.Map;
import java.util.TreeMap;

/**
 * The files of one side of a comparison.
 *
 * @param snapshot where they are read
 * @param paths path in the snapshot by the path they are paired by
 */
public record State(Snapshot snapshot, Map<String, String> paths) {
  public State {
    paths = java.util.Collections.unmodifiableMap(new TreeMap<>(paths));
  }
}
