package mullwright.check;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.layout.Cell;
import mullwright.model.LiteUse;
import mullwright.model.Origin;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.syntax.StatementKind;

/**
 * Edits that put safety glazing where it is needed: in the statement itself if all its lites need
 * it and lie between the same rows, else in a narrower one that speaks of those that do. Lites of
 * one statement between the same rows are mended by the same edit, which is made once.
 */
final class SaferGlass {
  private final WallFacts facts;
  private final BitSet needed;
  private final Map<Alike, List<Cell>> alike = new HashMap<>();
  private final Map<Origin, Integer> ofStatement = new HashMap<>();
  private final Map<Alike, Optional<Fix>> known = new HashMap<>();

  /** Lites of one statement between the same rows. */
  private record Alike(Origin statement, int below, int above) {
    static Alike of(Cell cell) {
      return new Alike(cell.use().orElseThrow().origin(), cell.below(), cell.above());
    }
  }

  /**
   * @param needed the cells that need safety glazing, by index
   */
  SaferGlass(WallFacts facts, BitSet needed) {
    this.facts = facts;
    this.needed = needed;
  }

  /** The edit that mends a lite, if the catalog has a glass that does. */
  Optional<Fix> fix(Cell it) {
    return known.computeIfAbsent(Alike.of(it), key -> make(it));
  }

  private Optional<Fix> make(Cell it) {
    Part.Glass glass = it.glass().orElseThrow();
    return facts.catalog().all(PartKind.GLASS).stream()
        .filter(Part.Glass.class::isInstance)
        .map(Part.Glass.class::cast)
        .filter(other -> other.safety().value())
        .filter(other -> other.opacified().value().equals(glass.opacified().value()))
        .findFirst()
        .flatMap(other -> take(it, other.name()));
  }

  private Optional<Fix> take(Cell it, String glass) {
    if (alike.isEmpty()) {
      group();
    }
    LiteUse use = it.use().orElseThrow();
    List<Cell> between = alike.get(Alike.of(it));
    boolean all =
        between.size() == ofStatement.get(use.origin())
            && between.stream().allMatch(cell -> needed.get(cell.index()));
    if (all) {
      Fix.Edit edit = new Fix.Edit(use.glass().origin(), Words.asName(glass));
      return Optional.of(new Fix("Take " + glass, List.of(edit)));
    }
    return new StatementEdits(facts.text())
        .addAfter(use.origin(), statement(use, glass, between))
        .map(edit -> new Fix("Take " + glass + " there", List.of(edit)));
  }

  private void group() {
    for (Cell cell : facts.layout().cells()) {
      if (cell.opening().isEmpty() && cell.use().isPresent()) {
        alike.computeIfAbsent(Alike.of(cell), key -> new ArrayList<>()).add(cell);
        ofStatement.merge(cell.use().get().origin(), 1, Integer::sum);
      }
    }
  }

  // a narrower statement, so that it wins where it is needed and nothing else changes
  private String statement(LiteUse use, String glass, List<Cell> between) {
    StatementKind kind = use.vision() ? StatementKind.VISION : StatementKind.SPANDREL;
    List<Cell> unsafe = between.stream().filter(cell -> needed.get(cell.index())).toList();
    return kind.spelling()
        + " "
        + Words.asName(glass)
        + " "
        + new BayRanges(facts.wall().grid()).clauses(unsafe);
  }
}
