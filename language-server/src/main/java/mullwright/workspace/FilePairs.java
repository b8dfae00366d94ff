package mullwright.workspace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import mullwright.syntax.ParsedFile;

/**
 * Tells which file of the newer state is which of the older: by path, and what is left by likeness
 * of its lines.
 */
final class FilePairs {
  /** Share of lines two files must have in common to be one file renamed. */
  private static final double LIKE = 0.5;

  /** The most files compared by likeness; beyond it only equal texts are paired. */
  private static final int COMPARED = 200;

  private FilePairs() {}

  /**
   * Two paths in their snapshots, one of which may be missing.
   *
   * @param renamed true if they were found to be one file under two names
   */
  record Pair(Optional<String> old, Optional<String> now, boolean renamed) {}

  private record Like(String old, String now, double share) {}

  static List<Pair> of(State old, State now) {
    Map<String, Pair> pairs = new TreeMap<>();
    List<String> gone = new ArrayList<>();
    List<String> come = new ArrayList<>();
    now.paths()
        .forEach(
            (key, path) -> {
              String was = old.paths().get(key);
              if (was == null) {
                come.add(key);
              } else {
                pairs.put(key, new Pair(Optional.of(was), Optional.of(path), false));
              }
            });
    old.paths().keySet().stream().filter(key -> !now.paths().containsKey(key)).forEach(gone::add);
    for (Like like : likes(old, gone, now, come)) {
      if (gone.contains(like.old) && come.contains(like.now)) {
        gone.remove(like.old);
        come.remove(like.now);
        pairs.put(
            like.now,
            new Pair(
                Optional.of(old.paths().get(like.old)),
                Optional.of(now.paths().get(like.now)),
                true));
      }
    }
    come.forEach(
        key ->
            pairs.put(key, new Pair(Optional.empty(), Optional.of(now.paths().get(key)), false)));
    gone.forEach(
        key ->
            pairs.put(key, new Pair(Optional.of(old.paths().get(key)), Optional.empty(), false)));
    return List.copyOf(pairs.values());
  }

  /** Likenesses that are large enough, the largest first. */
  private static List<Like> likes(State old, List<String> gone, State now, List<String> come) {
    List<Like> likes = new ArrayList<>();
    boolean many = Math.max(gone.size(), come.size()) > COMPARED;
    for (String was : gone) {
      String before = text(old, was);
      for (String is : come) {
        String after = text(now, is);
        double share = before.equals(after) ? 1 : many ? 0 : likeness(before, after);
        if (share >= LIKE) {
          likes.add(new Like(was, is, share));
        }
      }
    }
    likes.sort(
        Comparator.comparing(Like::share)
            .reversed()
            .thenComparing(Like::now)
            .thenComparing(Like::old));
    return likes;
  }

  private static String text(State state, String key) {
    return state.snapshot().file(state.paths().get(key)).map(ParsedFile::text).orElse("");
  }

  /** The share of lines both have, of the longer. */
  static double likeness(String one, String other) {
    Map<String, Integer> lines = new HashMap<>();
    int ones = count(one, lines, 1);
    Map<String, Integer> others = new HashMap<>();
    int longer = Math.max(ones, count(other, others, 1));
    int common = 0;
    for (Map.Entry<String, Integer> line : others.entrySet()) {
      common += Math.min(line.getValue(), lines.getOrDefault(line.getKey(), 0));
    }
    return longer == 0 ? 0 : (double) common / longer;
  }

  private static int count(String text, Map<String, Integer> lines, int each) {
    int total = 0;
    for (String line : text.split("\n")) {
      if (!line.isBlank()) {
        lines.merge(line.strip(), each, Integer::sum);
        total++;
      }
    }
    return total;
  }
}
