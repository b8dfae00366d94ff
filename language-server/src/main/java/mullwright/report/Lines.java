package mullwright.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Pieces as rows: each by itself, or those of one mark together. */
final class Lines {
  private Lines() {}

  /** Groups in the order their first piece appears. */
  static <P> List<List<P>> grouped(List<P> pieces, Function<P, String> mark, boolean each) {
    if (each) {
      return pieces.stream().map(List::of).toList();
    }
    Map<String, List<P>> byMark = new LinkedHashMap<>();
    for (P piece : pieces) {
      byMark.computeIfAbsent(mark.apply(piece), any -> new ArrayList<>()).add(piece);
    }
    return List.copyOf(byMark.values());
  }
}
