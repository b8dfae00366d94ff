package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import mullwright.analysis.wall.AnchorDemand;
import mullwright.layout.PlacedAnchor;

/**
 * An anchor that carries more than the capacity its catalog gives.
 *
 * <p>The reaction is that of the vertical over its true supports with its splices as hinges, at
 * service level. An aid to drafting: the engineer of the anchor governs.
 */
@AutoService(Rule.class)
public final class AnchorOverCapacity implements AnchorRule {
  @Override
  public About about() {
    return About.of(Group.ANCHOR, Severity.ERROR).guardingPeople();
  }

  @Override
  public void check(PlacedAnchor it, WallFacts facts, Findings found) {
    List<AnchorDemand> demands = AnchorDemand.all(facts.analysis(), it);
    AnchorDemand worst = null;
    for (AnchorDemand demand : demands) {
      boolean worse = worst == null || demand.share() > worst.share();
      worst = demand.passed() && worse ? demand : worst;
    }
    if (worst != null) {
      Findings.Draft draft = tell(it, worst, facts, found);
      new AnchorParts(facts, it).strongerFor(demands).ifPresent(draft::fix);
    }
  }

  private static Findings.Draft tell(
      PlacedAnchor it, AnchorDemand worst, WallFacts facts, Findings found) {
    Measures say = Measures.of(facts);
    return found
        .at(it.use().origin())
        .piece(it.name())
        .what(
            "It carries "
                + say.force(worst.newtons())
                + " "
                + worst.direction()
                + (worst.loads().contains("brackets") ? " under " + worst.loads() : "")
                + "; "
                + it.part().orElseThrow().name()
                + " is good for "
                + say.force(worst.capacity().orElseThrow().value().toSi())
                + " ("
                + Measures.share(worst.share())
                + " of it).")
        .mend("Take a stronger part, or ask the engineer of the anchor.")
        .measured(worst.explain())
        .limit(worst.limit())
        .related(worst.capacity().orElseThrow().origin(), "its capacity");
  }
}
