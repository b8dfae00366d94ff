package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.Optional;
import mullwright.analysis.wall.JointObstacle;
import mullwright.derivation.Derivation;
import mullwright.layout.SpliceJoint;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * A splice whose joint, or whose sleeve, meets a horizontal, its shear block or an anchor.
 *
 * <p>The block screws to one length and the next moves past it, or bolts and screws pin the sleeve
 * that should slide. Geometry.
 */
@AutoService(Rule.class)
public final class SpliceOnHorizontal implements SpliceRule {
  @Override
  public About about() {
    return About.of(Group.SPLICE, Severity.ERROR);
  }

  @Override
  public void check(SpliceJoint it, WallFacts facts, Findings found) {
    Length gap = it.splice().gap().value().half();
    Optional<Part.Sleeve> sleeve = JointObstacle.sleeve(facts.layout(), it);
    for (JointObstacle obstacle : JointObstacle.of(facts.analysis(), it)) {
      if (obstacle.clearance(it, gap).signum() < 0) {
        tell(it, obstacle, "the joint", gap, facts, found);
      } else if (sleeve.isPresent()) {
        Length half = sleeve.get().length().value().half();
        if (obstacle.clearance(it, half).signum() < 0) {
          tell(it, obstacle, "the sleeve " + sleeve.get().name(), half, facts, found)
              .severity(Severity.WARNING);
        }
      }
    }
  }

  private static Findings.Draft tell(
      SpliceJoint it,
      JointObstacle obstacle,
      String what,
      Length half,
      WallFacts facts,
      Findings found) {
    Measures say = Measures.of(facts);
    return found
        .at(it.splice().origin())
        .piece(it.name())
        .what(
            Words.sentence(
                what
                    + ", "
                    + say.length(it.y().minus(half))
                    + " to "
                    + say.length(it.y().plus(half))
                    + ", runs into the "
                    + obstacle.name()
                    + ", "
                    + say.length(obstacle.from())
                    + " to "
                    + say.length(obstacle.to())
                    + ", by "
                    + say.length(obstacle.clearance(it, half).abs())))
        .mend("Move the splice clear of it.")
        .measured(obstacle.measured(it, what, half))
        .limit(Derivation.assumed("least clear distance", Length.ZERO, "geometry"))
        .related(obstacle.origin(), "what it runs into");
  }
}
