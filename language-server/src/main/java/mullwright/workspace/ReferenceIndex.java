package mullwright.workspace;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import mullwright.model.Reference;

/** The references of one file by segment, so that a cursor need not look through all of them. */
final class ReferenceIndex {
  private final Map<Integer, List<Reference>> bySegment = new HashMap<>();

  private ReferenceIndex() {}

  static ReferenceIndex of(List<Reference> references, String path) {
    ReferenceIndex index = new ReferenceIndex();
    for (Reference reference : references) {
      if (reference.origin().file().equals(path)) {
        index
            .bySegment
            .computeIfAbsent(reference.origin().segment(), segment -> new ArrayList<>())
            .add(reference);
      }
    }
    return index;
  }

  /** Those that touch the offset, counted from the segment's start. */
  List<Reference> at(int segment, int offset) {
    return bySegment.getOrDefault(segment, List.of()).stream()
        .filter(reference -> reference.origin().range().touches(offset))
        .toList();
  }
}
