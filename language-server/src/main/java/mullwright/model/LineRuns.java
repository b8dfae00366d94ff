package mullwright.model;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.syntax.Argument;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Selection;

/**
 * Resolves statements about lines that may each reach {@code from … to …}: several stretches of one
 * line stand beside each other as long as they do not overlap.
 */
final class LineRuns {
  private final GridNames names;
  private final Collector collector;
  private final Narrower narrower;
  private final Map<Claim, GridNames.Extent> extents = new IdentityHashMap<>();

  /** A stretch of a line: what holds there and its reach, empty for full height. */
  record Run(Narrower.Resolved resolved, Optional<GridNames.Extent> extent) {}

  LineRuns(String what, GridNames names, Collector collector) {
    this.names = names;
    this.collector = collector;
    this.narrower = new Narrower(what, key -> "line " + names.lineName(key), collector);
  }

  /** The claim a statement makes about the lines it names; empty if it names none. */
  Optional<Claim> claim(Said said) {
    Optional<Selection> selection =
        said.argument(Argument.Select.class).map(Argument.Select::selection);
    if (selection.isEmpty()) {
      return Optional.empty();
    }
    BitSet lines = new SelectionReader(said, collector).list(selection.get(), names.lines()).set();
    Claim claim = new Claim(said, said.statement().keyword().text(), lines);
    Optional<GridNames.Extent> extent = names.extent(said, names.beside(lines), collector);
    if (said.clause(ClauseWord.FROM, Clause.Extent.class).isPresent() && extent.isEmpty()) {
      return Optional.empty();
    }
    extent.ifPresent(
        found -> {
          extents.put(claim, found);
          claim.set(
              Facet.FROM,
              found.elevations(),
              said.statement().clause(ClauseWord.FROM).get().range());
        });
    return Optional.of(claim);
  }

  void add(Claim claim) {
    narrower.add(claim);
  }

  /** The runs of every line, from below; no list for a line nothing speaks of. */
  List<List<Run>> solve() {
    narrower.solve();
    Map<Integer, List<Run>> known = new HashMap<>();
    List<List<Run>> runs = new ArrayList<>();
    for (int line = 0; line < names.lines().size(); line++) {
      int at = line;
      int group = narrower.group(line);
      runs.add(group == 0 ? List.of() : known.computeIfAbsent(group, key -> runs(at)));
    }
    narrower.reportShadowed();
    return runs;
  }

  private List<Run> runs(int line) {
    List<Claim> reaching = narrower.narrowest(line, Facet.FROM);
    if (reaching.isEmpty()) {
      return List.of(new Run(narrower.at(line), Optional.empty()));
    }
    List<Claim> distinct = new ArrayList<>();
    for (Claim claim : reaching) {
      if (distinct.stream().noneMatch(other -> other.agrees(claim, Facet.FROM))) {
        distinct.add(claim);
      }
    }
    distinct.sort(Comparator.comparing(claim -> claim.get(Facet.FROM).value().from()));
    List<Run> runs = new ArrayList<>();
    Claim before = null;
    for (Claim claim : distinct) {
      if (before != null && overlap(before, claim)) {
        narrower.conflict(before, claim, line, Facet.FROM);
        continue;
      }
      // stretches of equal right do not speak of each other
      Narrower.Resolved resolved =
          narrower.without(
              line, other -> reaching.contains(other) && !other.agrees(claim, Facet.FROM));
      runs.add(new Run(resolved, Optional.of(extents.get(claim))));
      before = claim;
    }
    return runs;
  }

  private static boolean overlap(Claim one, Claim other) {
    return one.get(Facet.FROM).value().overlaps(other.get(Facet.FROM).value());
  }
}
