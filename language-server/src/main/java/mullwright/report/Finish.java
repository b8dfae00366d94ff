package mullwright.report;

import java.util.Comparator;
import java.util.Map;
import java.util.stream.Collectors;
import mullwright.model.Wall;

/** A wall's finish in words: {@code bronze outside, clear inside}. */
final class Finish {
  private static final Comparator<String> OUTSIDE_FIRST =
      Comparator.comparing((String side) -> side.equals("inside"))
          .thenComparing(Comparator.naturalOrder());

  private Finish() {}

  static String of(Wall wall) {
    return wall.finish().entrySet().stream()
        .sorted(Map.Entry.comparingByKey(OUTSIDE_FIRST))
        .map(side -> (side.getValue().value() + " " + side.getKey()).strip())
        .collect(Collectors.joining(", "));
  }
}
