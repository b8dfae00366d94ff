package mullwright.workspace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import mullwright.check.Rules;
import mullwright.check.WallFacts;
import mullwright.quantity.UnitSystem;
import mullwright.review.Disagreement;
import mullwright.review.ThreeWay;

/**
 * Where two sides of a merge disagree in one file.
 *
 * @param file its path on our side
 * @param merges true if the texts merge line by line, those of used files included
 * @param walls disagreements by wall, in the order of our text; walls without any are left out
 */
public record MergeReview(String file, boolean merges, Map<String, List<Disagreement>> walls) {

  /** True if the texts merge and no wall disagrees. */
  public boolean clean() {
    return merges && walls.isEmpty();
  }

  /** All files that both sides have and that base has, in the order of their paths. */
  public static List<MergeReview> of(
      State base, State ours, State theirs, UnitSystem units, Rules rules, Cancel cancel) {
    List<MergeReview> found = new ArrayList<>();
    ours.paths()
        .forEach(
            (key, path) -> {
              String was = base.paths().get(key);
              String other = theirs.paths().get(key);
              if (was != null && other != null) {
                cancel.check();
                found.add(
                    new Merge(
                            new Part(base.snapshot(), was),
                            new Part(ours.snapshot(), path),
                            new Part(theirs.snapshot(), other))
                        .review(units, rules, cancel));
              }
            });
    return found;
  }

  /** A file in its state. */
  private record Part(Snapshot snapshot, String path) {
    Map<String, String> texts() {
      Map<String, String> texts = new TreeMap<>();
      UsedTexts.of(path, snapshot::look)
          .forEach(
              (name, read) -> {
                if (read instanceof Files.Read.Text text) {
                  texts.put(name.equals(path) ? "" : name, text.text());
                }
              });
      return texts;
    }

    Map<String, ThreeWay.Side> walls(Cancel cancel) {
      Map<String, ThreeWay.Side> walls = new LinkedHashMap<>();
      for (Reading reading : snapshot.reading(path).stream().toList()) {
        for (WallFacts facts : reading.walls()) {
          walls.putIfAbsent(
              facts.wall().name(), new ThreeWay.Side(facts, reading.findingsOf(facts, cancel)));
        }
      }
      return walls;
    }
  }

  private record Merge(Part base, Part ours, Part theirs) {
    MergeReview review(UnitSystem units, Rules rules, Cancel cancel) {
      Optional<Part> merged = merged(rules);
      Map<String, ThreeWay.Side> was = base.walls(cancel);
      Map<String, ThreeWay.Side> other = theirs.walls(cancel);
      Map<String, ThreeWay.Side> both = merged.map(part -> part.walls(cancel)).orElse(Map.of());
      Map<String, List<Disagreement>> walls = new LinkedHashMap<>();
      ours.walls(cancel)
          .forEach(
              (name, side) -> {
                if (was.containsKey(name) && other.containsKey(name)) {
                  List<Disagreement> found =
                      ThreeWay.of(
                          was.get(name),
                          side,
                          other.get(name),
                          Optional.ofNullable(both.get(name)),
                          units);
                  if (!found.isEmpty()) {
                    walls.put(name, found);
                  }
                }
              });
      return new MergeReview(ours.path(), merged.isPresent(), walls);
    }

    /** The merged texts of the file and of all it uses. */
    private Optional<Part> merged(Rules rules) {
      Map<String, String> b = base.texts();
      Map<String, String> o = ours.texts();
      Map<String, String> t = theirs.texts();
      TreeSet<String> names = new TreeSet<>(o.keySet());
      names.addAll(t.keySet());
      Map<String, String> files = new TreeMap<>();
      for (String name : names) {
        Optional<String> text = merged(b.get(name), o.get(name), t.get(name));
        if (text.isEmpty()) {
          return Optional.empty();
        }
        files.put(name.isEmpty() ? ours.path() : name, text.get());
      }
      Workspace together = new Workspace(new MemoryFiles(files), rules);
      return Optional.of(new Part(together.snapshot(), ours.path()));
    }

    private static Optional<String> merged(String base, String ours, String theirs) {
      if (ours == null || theirs == null || ours.equals(theirs)) {
        return Optional.of(ours == null ? theirs : ours);
      }
      return TextMerge.of(base == null ? "" : base, ours, theirs);
    }
  }
}
