package mullwright.analysis.wall;

import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.function.Function;
import mullwright.layout.Cell;

/** Results by cell, the very same one; several threads may ask. */
final class CellMap<T> {
  private final Map<Cell, T> results = Collections.synchronizedMap(new IdentityHashMap<>());

  T computeIfAbsent(Cell cell, Function<Cell, T> compute) {
    T known = results.get(cell);
    if (known == null) {
      known = compute.apply(cell);
      results.put(cell, known);
    }
    return known;
  }
}
