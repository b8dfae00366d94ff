package mullwright.workspace;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import mullwright.check.Finding;
import mullwright.check.Unused;
import mullwright.check.WallFacts;
import mullwright.layout.Cell;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.review.WallFactsReader;

/**
 * An edit that is only thought of: whether anything would mean something else after it, and how
 * many pieces would become others.
 *
 * @param before as things stand
 * @param after the texts after it
 */
public record Supposition(Snapshot before, Map<String, String> after) {
  public Supposition {
    after = Map.copyOf(after);
  }

  /**
   * What of a wall is another afterwards, counted by what is no longer there.
   *
   * @param lengths pieces whose cut length is needed no more
   * @param glass lites whose size is needed no more
   */
  public record Changed(int lengths, int glass) {}

  /**
   * Why the edit is not one that only says the same in other words: a sentence, empty if it is.
   * Looked at are all walls of the workspace that use one of the files: every cut length, every
   * size of glass, every fact of the wall and of the parts it is made of, everything that is found.
   */
  public Optional<String> difference(Cancel cancel) {
    Snapshot then = before.supposing(after);
    Map<String, Map<Object, Integer>> was = new LinkedHashMap<>();
    Map<String, Map<Object, Integer>> is = new LinkedHashMap<>();
    for (String path : concerned(cancel)) {
      before.reading(path).ifPresent(reading -> describe(reading, was, cancel));
      then.reading(path).ifPresent(reading -> describe(reading, is, cancel));
    }
    for (String path : after.keySet()) {
      if (before.file(path).isEmpty()) {
        then.reading(path).ifPresent(reading -> describe(reading, is, cancel));
      }
    }
    Set<String> names = new LinkedHashSet<>(was.keySet());
    names.addAll(is.keySet());
    for (String name : names) {
      if (!Objects.equals(was.get(name), is.get(name))) {
        return Optional.of(name + " would be another");
      }
    }
    return Optional.empty();
  }

  /** What becomes another in the walls of a file. */
  public Changed changed(String path, Cancel cancel) {
    Map<Object, Integer> lengths = new HashMap<>();
    Map<Object, Integer> glass = new HashMap<>();
    count(before, path, 1, lengths, glass);
    cancel.check();
    count(before.supposing(after), path, -1, lengths, glass);
    return new Changed(left(lengths), left(glass));
  }

  private static int left(Map<Object, Integer> counts) {
    return counts.values().stream().mapToInt(count -> Math.max(0, count)).sum();
  }

  private static void count(
      Snapshot snapshot,
      String path,
      int sign,
      Map<Object, Integer> lengths,
      Map<Object, Integer> glass) {
    for (WallLayout layout : snapshot.reading(path).map(Reading::layouts).orElse(List.of())) {
      for (VerticalPiece piece : layout.verticals()) {
        lengths.merge(List.of(piece.profile().name(), piece.length()), sign, Integer::sum);
      }
      for (HorizontalPiece piece : layout.horizontals()) {
        lengths.merge(List.of(piece.profile().name(), piece.length()), sign, Integer::sum);
      }
      for (Cell cell : layout.cells()) {
        if (cell.use().isPresent() && cell.opening().isEmpty()) {
          glass.merge(List.of(cell.glassWidth(), cell.glassHeight()), sign, Integer::sum);
        }
      }
    }
  }

  /** The files with walls that stand on one of those edited. */
  private Set<String> concerned(Cancel cancel) {
    Set<String> concerned = new LinkedHashSet<>();
    for (String path : before.walls()) {
      cancel.check();
      boolean stands =
          before
              .reading(path)
              .filter(reading -> reading.files().stream().anyMatch(after::containsKey))
              .isPresent();
      if (stands) {
        concerned.add(path);
      }
    }
    return concerned;
  }

  /** Walls of one name, in several files, are told side by side. */
  private static void describe(
      Reading reading, Map<String, Map<Object, Integer>> told, Cancel cancel) {
    for (WallFacts facts : reading.walls()) {
      cancel.check();
      String wall = " in wall " + facts.wall().name();
      tell("a size" + wall, sizes(facts.layout()), told);
      WallFactsReader.read(facts)
          .facts()
          .forEach((fact, value) -> tell("“" + fact + "”" + wall, value, told));
    }
    for (Finding finding : reading.findings(cancel)) {
      if (finding.rule().equals(Unused.NAME)) {
        // a name that nothing names changes no wall
        continue;
      }
      String name =
          finding.piece().isEmpty()
              ? "what the rule “" + finding.rule() + "” finds in the text"
              : "what the rule “" + finding.rule() + "” finds of " + finding.piece();
      tell(name, finding.rule(), told);
    }
  }

  private static void tell(String name, Object what, Map<String, Map<Object, Integer>> told) {
    told.computeIfAbsent(name, first -> new HashMap<>()).merge(what, 1, Integer::sum);
  }

  private static List<Object> sizes(WallLayout layout) {
    List<Object> sizes = new ArrayList<>();
    layout.verticals().forEach(piece -> sizes.add(piece.length()));
    layout.horizontals().forEach(piece -> sizes.add(piece.length()));
    for (Cell cell : layout.cells()) {
      sizes.add(cell.glassWidth());
      sizes.add(cell.glassHeight());
      sizes.add(cell.glass().map(glass -> glass.name()).orElse(""));
    }
    return sizes;
  }
}
