package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.BitSet;
import java.util.stream.Collectors;
import mullwright.analysis.glass.SafetyCategory;
import mullwright.analysis.lite.LiteSafety;
import mullwright.layout.Cell;
import mullwright.model.LiteUse;
import mullwright.model.Part;

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
    SaferGlass safer = new SaferGlass(facts, needed);
    for (Cell it : facts.layout().cells()) {
      if (needed.get(it.index()) && it.glass().filter(g -> !g.safety().value()).isPresent()) {
        tell(it, places.of(it).shown().orElseThrow(), safer, facts, found);
      }
    }
  }

  private static void tell(
      Cell it, LiteSafety.Seen seen, SaferGlass safer, WallFacts facts, Findings found) {
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
    safer.fix(it).ifPresent(draft::fix);
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
}
