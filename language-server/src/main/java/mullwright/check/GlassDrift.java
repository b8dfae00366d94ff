package mullwright.check;

import com.google.auto.service.AutoService;
import mullwright.analysis.lite.LiteDrift;
import mullwright.layout.Cell;
import mullwright.model.Part;

/**
 * A lite that touches its frame before the storey has drifted as far as it may.
 *
 * <p>ASCE 7, section 13.5.9, from memory. An aid to drafting: a licensed engineer and the local
 * code govern.
 */
@AutoService(Rule.class)
public final class GlassDrift implements LiteRule {
  @Override
  public About about() {
    return About.of(Group.GLASS, Severity.ERROR);
  }

  @Override
  public void check(Cell it, WallFacts facts, Findings found) {
    LiteDrift.of(facts.analysis(), it)
        .filter(drift -> !drift.result().exempt())
        .ifPresent(drift -> tell(it, drift, facts, found));
  }

  private static void tell(Cell it, LiteDrift drift, WallFacts facts, Findings found) {
    Measures say = Measures.of(facts);
    Findings.Draft draft =
        found
            .at(it.use().orElseThrow().origin())
            .piece(it.name())
            .what(
                "It touches its frame at a drift of "
                    + say.length(drift.result().clearDrift())
                    + "; it must clear "
                    + say.length(drift.result().demand())
                    + ".")
            .mend(
                "Give it more edge clearance, or have a test show that it stays in up to "
                    + say.length(drift.result().falloutDrift())
                    + ".")
            .measured(drift.clearDrift())
            .limit(drift.demand());
    Part.Profile least =
        drift.profiles().stream()
            .min(java.util.Comparator.comparing(p -> p.edgeClearance().value()))
            .orElseThrow();
    draft.related(least.edgeClearance().origin(), "the clearance of " + least.name());
  }
}
