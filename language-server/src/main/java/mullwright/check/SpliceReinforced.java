package mullwright.check;

import com.google.auto.service.AutoService;
import mullwright.derivation.Derivation;
import mullwright.layout.SpliceJoint;
import mullwright.model.Members;
import mullwright.quantity.Length;

/**
 * Reinforcement that runs across a splice: it holds the two lengths together that must move.
 *
 * <p>The sleeve has no room either, since the bar takes its place. Common practice.
 */
@AutoService(Rule.class)
public final class SpliceReinforced implements SpliceRule {
  @Override
  public About about() {
    return About.of(Group.SPLICE, Severity.ERROR);
  }

  @Override
  public void check(SpliceJoint it, WallFacts facts, Findings found) {
    for (Members.Reinforce reinforce : facts.wall().members().reinforcements()) {
      if (reinforce.line() == it.line() && crosses(reinforce, it)) {
        tell(it, reinforce, facts, found);
      }
    }
  }

  private static boolean crosses(Members.Reinforce reinforce, SpliceJoint joint) {
    Length half = joint.splice().gap().value().half();
    Length lower = joint.y().minus(half);
    Length upper = joint.y().plus(half);
    return reinforce.from().map(from -> from.elevation().isShorterThan(upper)).orElse(true)
        && reinforce.to().map(to -> to.elevation().isLongerThan(lower)).orElse(true);
  }

  private static void tell(
      SpliceJoint it, Members.Reinforce reinforce, WallFacts facts, Findings found) {
    Measures say = Measures.of(facts);
    String from =
        reinforce.from().map(h -> "from " + say.length(h.elevation())).orElse("full height");
    String to = reinforce.to().map(h -> " to " + say.length(h.elevation())).orElse("");
    Findings.Draft draft =
        found
            .at(reinforce.origin())
            .piece(it.name())
            .what(
                "The reinforcement "
                    + reinforce.part().value()
                    + ", "
                    + from
                    + to
                    + ", runs across the joint at "
                    + say.length(it.y())
                    + ".")
            .mend("Stop it short of the joint and begin again beyond: from PLACE to PLACE.")
            .limit(Derivation.stated("height of the splice", it.y(), it.splice().at().origin()))
            .related(it.splice().origin(), "the splice");
    reinforce
        .to()
        .or(reinforce::from)
        .map(end -> Derivation.stated("end of the reinforcement", end.elevation(), end.origin()))
        .ifPresent(draft::measured);
  }
}
