package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import mullwright.analysis.lite.LiteBite;
import mullwright.analysis.wall.Inputs;
import mullwright.derivation.Derivation;
import mullwright.layout.Cell;
import mullwright.model.Given;
import mullwright.quantity.Length;

/**
 * An edge of a lite that keeps too little bite, or touches metal, when tolerances and heat are
 * against it.
 *
 * <p>Common practice; the least bite is the project's or a default that says so.
 */
@AutoService(Rule.class)
public final class GlassBite implements LiteRule {
  @Override
  public About about() {
    return About.of(Group.GLASS, Severity.ERROR);
  }

  @Override
  public void check(Cell it, WallFacts facts, Findings found) {
    if (it.use().isEmpty()) {
      return;
    }
    Given<Length> least = facts.wall().criteria().glass().leastBite();
    List<LiteBite.Left> edges = LiteBite.of(facts.analysis(), it);
    for (LiteBite.Left left : edges) {
      if (left.bite() < least.value().toMetres() - 1e-9) {
        bite(it, left, least, facts, found);
        return;
      }
    }
    for (LiteBite.Left left : edges) {
      if (left.clearance() <= 0) {
        clearance(it, left, facts, found);
        return;
      }
    }
  }

  private static void bite(
      Cell it, LiteBite.Left left, Given<Length> least, WallFacts facts, Findings found) {
    Measures say = Measures.of(facts);
    found
        .at(it.use().orElseThrow().origin())
        .piece(it.name())
        .what(
            "Of its bite of "
                + say.length(left.stated().value())
                + " at the "
                + left.edge()
                + " edge, "
                + (left.bite() > 0 ? say.length(left.bite()) + " is left" : "nothing is left")
                + " under tolerances and heat; it needs "
                + say.length(least.value())
                + (least.assumed() ? ", a default." : "."))
        .mend("Give " + left.profile().name() + " or the glass more bite.")
        .measured(left.explainBite())
        .limit(Inputs.length("least bite", least))
        .related(left.stated().origin(), "the bite");
  }

  private static void clearance(Cell it, LiteBite.Left left, WallFacts facts, Findings found) {
    Measures say = Measures.of(facts);
    found
        .at(it.use().orElseThrow().origin())
        .piece(it.name())
        .what(
            "Its "
                + left.edge()
                + " edge, "
                + say.length(left.statedClearance().value())
                + " clear of metal, touches it under tolerances and cold.")
        .mend("Give " + left.profile().name() + " more edge-clearance.")
        .measured(left.explainClearance())
        .limit(Derivation.assumed("least clearance", Length.ZERO, "glass never touches metal"))
        .related(left.statedClearance().origin(), "the edge clearance");
  }
}
