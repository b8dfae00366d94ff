package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import mullwright.analysis.glass.SafetyCategory;
import mullwright.analysis.lite.LiteSafety;
import mullwright.layout.Cell;
import mullwright.model.Grid;
import mullwright.model.LiteUse;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.syntax.StatementKind;

/**
 * A lite in a hazardous location that is not of safety glazing.
 *
 * <p>IBC 2406.4.3 (windows near a walking surface) and 2406.4.2 (beside a door), recent editions,
 * from memory. An aid to drafting: a licensed engineer and the local code govern.
 */
@AutoService(Rule.class)
public final class GlassSafety implements WallRule {
  @Override
  public About about() {
    return About.of(Group.GLASS, Severity.ERROR).guardingPeople();
  }

  @Override
  public void check(WallFacts facts, Findings found) {
    LiteSafety.Places places = LiteSafety.places(facts.layout());
    BitSet needed = new BitSet();
    for (Cell cell : facts.layout().cells()) {
      needed.set(
          cell.index(), cell.use().isPresent() && cell.opening().isEmpty() && places.require(cell));
    }
    for (Cell it : facts.layout().cells()) {
      if (needed.get(it.index()) && it.glass().filter(g -> !g.safety().value()).isPresent()) {
        tell(it, places.of(it).shown().orElseThrow(), needed, facts, found);
      }
    }
  }

  private static void tell(
      Cell it, LiteSafety.Seen seen, BitSet needed, WallFacts facts, Findings found) {
    LiteUse use = it.use().orElseThrow();
    Part.Glass glass = it.glass().orElseThrow();
    Measures say = Measures.of(facts);
    Findings.Draft draft =
        found
            .at(use.origin())
            .piece(it.name())
            .what(
                seen.clause()
                    + " asks for safety glazing, seen from "
                    + seen.from()
                    + ": "
                    + conditions(seen, say)
                    + (it.rectangular() ? "" : " (of its bounding size)")
                    + "; "
                    + glass.name()
                    + (glass.safety().assumed() ? " is not said to be" : " is said not to be")
                    + " safety rated.")
            .mend(
                "Take a glass rated "
                    + category(seen.category())
                    + ", or say safety yes in the catalog if its maker rates it so.")
            .related(
                glass.safety().assumed() ? glass.origin() : glass.safety().origin(), "the glass");
    facts.catalog().all(PartKind.GLASS).stream()
        .filter(Part.Glass.class::isInstance)
        .map(Part.Glass.class::cast)
        .filter(other -> other.safety().value())
        .filter(other -> other.opacified().value().equals(glass.opacified().value()))
        .findFirst()
        .flatMap(other -> take(it, use, other.name(), needed, facts))
        .ifPresent(draft::fix);
  }

  private static Optional<Fix> take(
      Cell it, LiteUse use, String glass, BitSet needed, WallFacts facts) {
    boolean all =
        facts.layout().cells().stream()
            .filter(cell -> isOf(cell, use))
            .allMatch(cell -> sameRows(cell, it) && needed.get(cell.index()));
    if (all) {
      Fix.Edit edit = new Fix.Edit(use.glass().origin(), Words.asName(glass));
      return Optional.of(new Fix("Take " + glass, List.of(edit)));
    }
    return new StatementEdits(facts.text())
        .addAfter(use.origin(), statement(it, use, glass, needed, facts))
        .map(edit -> new Fix("Take " + glass + " there", List.of(edit)));
  }

  private static boolean isOf(Cell cell, LiteUse use) {
    return cell.opening().isEmpty()
        && cell.use().filter(other -> other.origin().equals(use.origin())).isPresent();
  }

  private static boolean sameRows(Cell cell, Cell it) {
    return cell.below() == it.below() && cell.above() == it.above();
  }

  /** The conditions one by one, each with what the lite has. */
  private static String conditions(LiteSafety.Seen seen, Measures say) {
    return seen.conditions().stream()
        .map(
            condition ->
                condition.words()
                    + " ("
                    + (condition.unit().equals("m²")
                        ? say.area(condition.measured())
                        : say.length(condition.measured()))
                    + (seen.reaches() && condition.words().startsWith("a walking")
                        ? ", floor taken to reach the wall"
                        : "")
                    + ")")
        .collect(Collectors.joining(", "));
  }

  private static String category(SafetyCategory category) {
    return category == SafetyCategory.CATEGORY_I
        ? "16 CFR 1201 category I"
        : "16 CFR 1201 category II";
  }

  // a narrower statement, so that it wins where it is needed and nothing else changes
  private static String statement(
      Cell it, LiteUse use, String glass, BitSet needed, WallFacts facts) {
    Grid grid = facts.wall().grid();
    StatementKind kind = use.vision() ? StatementKind.VISION : StatementKind.SPANDREL;
    return kind.spelling()
        + " "
        + Words.asName(glass)
        + " rows "
        + Words.asName(grid.rows().get(it.below()).name())
        + ".."
        + Words.asName(grid.rows().get(it.above()).name())
        + " bays "
        + String.join(", ", bays(it, use, needed, facts));
  }

  // of all lites of the statement between those rows that need it
  private static List<String> bays(Cell it, LiteUse use, BitSet needed, WallFacts facts) {
    List<String> ranges = new ArrayList<>();
    Grid grid = facts.wall().grid();
    int from = -1;
    int to = -1;
    for (Cell cell : facts.layout().cells()) {
      boolean alike = sameRows(cell, it) && isOf(cell, use) && needed.get(cell.index());
      if (!alike) {
        continue;
      }
      int left = grid.bays().get(cell.firstBay()).left();
      if (left != to) {
        range(grid, from, to).ifPresent(ranges::add);
        from = left;
      }
      to = grid.bays().get(cell.lastBay()).right();
    }
    range(grid, from, to).ifPresent(ranges::add);
    return ranges;
  }

  private static Optional<String> range(Grid grid, int from, int to) {
    return from < 0
        ? Optional.empty()
        : Optional.of(
            Words.asName(grid.lines().get(from).name())
                + ".."
                + Words.asName(grid.lines().get(to).name()));
  }
}
