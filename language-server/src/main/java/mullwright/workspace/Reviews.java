package mullwright.workspace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.check.Finding;
import mullwright.check.Severity;
import mullwright.check.WallFacts;
import mullwright.review.FindingPairs;
import mullwright.review.WallReview;
import mullwright.review.WallReviewer;
import mullwright.syntax.ParsedFile;

/** Compares two states of some files, wall by wall. */
public final class Reviews {
  private Reviews() {}

  /**
   * What changed, in the order of the newer paths. A file whose text and used files are the same in
   * both is left out without a look at its walls.
   */
  public static List<FileReview> of(State old, State now, Cancel cancel) {
    List<FileReview> found = new ArrayList<>();
    for (FilePairs.Pair pair : FilePairs.of(old, now)) {
      cancel.check();
      if (pair.old().equals(pair.now()) && sameTexts(pair.now().orElseThrow(), old, now)) {
        continue;
      }
      Optional<Reading> before = pair.old().flatMap(path -> old.snapshot().reading(path));
      Optional<Reading> after = pair.now().flatMap(path -> now.snapshot().reading(path));
      FileReview review = review(pair, before, after, old, now, cancel);
      if (!review.nothing()) {
        found.add(review);
      }
    }
    return found;
  }

  /** Whether the file and all it stands on say the very same; no wall is read to tell. */
  private static boolean sameTexts(String path, State old, State now) {
    return UsedTexts.of(path, old.snapshot()::look)
        .equals(UsedTexts.of(path, now.snapshot()::look));
  }

  private static FileReview review(
      FilePairs.Pair pair,
      Optional<Reading> before,
      Optional<Reading> after,
      State old,
      State now,
      Cancel cancel) {
    Optional<String> was =
        pair.old().flatMap(path -> old.snapshot().file(path)).map(ParsedFile::text);
    Optional<String> is =
        pair.now().flatMap(path -> now.snapshot().file(path)).map(ParsedFile::text);
    FindingPairs text =
        FindingPairs.of(
            before.map(reading -> reading.findingsOfText(cancel)).orElse(List.of()),
            after.map(reading -> reading.findingsOfText(cancel)).orElse(List.of()),
            piece -> piece);
    int errors =
        (int)
            after.map(reading -> reading.findingsOfText(cancel)).orElse(List.of()).stream()
                .filter(finding -> finding.severity() == Severity.ERROR)
                .count();
    return new FileReview(
        pair.old(),
        pair.now(),
        pair.renamed(),
        !was.equals(is),
        errors,
        walls(before, after, cancel),
        text);
  }

  private static List<WallReview> walls(
      Optional<Reading> before, Optional<Reading> after, Cancel cancel) {
    Map<String, WallFacts> old = byName(before);
    Map<String, WallFacts> now = byName(after);
    Map<String, String> olderName = WallNamesPaired.of(old, now);
    List<WallReview> found = new ArrayList<>();
    now.forEach(
        (name, facts) -> {
          cancel.check();
          List<Finding> findings = after.orElseThrow().findingsOf(facts, cancel);
          WallFacts was = old.get(olderName.getOrDefault(name, ""));
          WallReview review =
              was == null
                  ? WallReviewer.added(facts, findings)
                  : WallReviewer.compare(
                      was, before.orElseThrow().findingsOf(was, cancel), facts, findings);
          if (!review.empty()) {
            found.add(review);
          }
        });
    old.forEach(
        (name, facts) -> {
          if (!olderName.containsValue(name)) {
            found.add(WallReviewer.removed(facts, before.orElseThrow().findingsOf(facts, cancel)));
          }
        });
    return found;
  }

  private static Map<String, WallFacts> byName(Optional<Reading> reading) {
    Map<String, WallFacts> walls = new LinkedHashMap<>();
    reading
        .map(Reading::walls)
        .orElse(List.of())
        .forEach(facts -> walls.putIfAbsent(facts.wall().name(), facts));
    return walls;
  }

  /** Which wall was which. */
  private static final class WallNamesPaired {
    private WallNamesPaired() {}

    /** Older name by newer: the same name, else the one wall left over on both sides. */
    static Map<String, String> of(Map<String, WallFacts> old, Map<String, WallFacts> now) {
      Map<String, String> paired = new LinkedHashMap<>();
      now.keySet().stream().filter(old::containsKey).forEach(name -> paired.put(name, name));
      List<String> gone = old.keySet().stream().filter(name -> !now.containsKey(name)).toList();
      List<String> come = now.keySet().stream().filter(name -> !old.containsKey(name)).toList();
      if (gone.size() == 1 && come.size() == 1) {
        paired.put(come.get(0), gone.get(0));
      }
      return paired;
    }
  }
}
