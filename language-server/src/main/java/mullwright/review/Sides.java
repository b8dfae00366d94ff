package mullwright.review;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import mullwright.check.WallFacts;

/**
 * The two walls of a comparison, with what each states.
 *
 * @param old the older, {@code now} the newer
 */
record Sides(
    WallFacts old,
    WallFacts now,
    WallNames oldNames,
    WallNames nowNames,
    FactSheet before,
    FactSheet after) {

  static Sides of(WallFacts old, WallFacts now) {
    WallNames oldNames = WallNames.ofOlder(old.wall(), now.wall());
    WallNames nowNames = WallNames.of(now.wall());
    return new Sides(
        old,
        now,
        oldNames,
        nowNames,
        WallFactsReader.read(old, oldNames),
        WallFactsReader.read(now, nowNames));
  }

  /** All lines of either wall from left to right, those of the newer first where both stand. */
  List<String> lines() {
    return merged(nowNames.lines(), oldNames.lines());
  }

  /** All floors of either wall from below. */
  List<String> floors() {
    return merged(nowNames.floors(), oldNames.floors());
  }

  /** All rows of either wall from below. */
  List<String> rows() {
    return merged(nowNames.rows(), oldNames.rows());
  }

  /** What only the older has is put after the neighbour it stood behind. */
  private static List<String> merged(List<String> now, List<String> old) {
    List<String> all = new ArrayList<>(now);
    Set<String> known = new LinkedHashSet<>(now);
    for (int i = 0; i < old.size(); i++) {
      if (known.add(old.get(i))) {
        int after = i == 0 ? -1 : all.indexOf(old.get(i - 1));
        all.add(after + 1, old.get(i));
      }
    }
    return all;
  }
}
