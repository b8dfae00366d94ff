package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.wall.JointObstacle;
import mullwright.analysis.wall.JointPlace;
import mullwright.derivation.Derivation;
import mullwright.layout.SpliceJoint;
import mullwright.layout.SystemPart;
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
    Optional<Part.Sleeve> sleeve = SystemPart.sleeve(facts.layout(), it);
    Length reach = sleeve.map(part -> Length.max(gap, part.length().value().half())).orElse(gap);
    List<JointObstacle> obstacles = JointObstacle.within(facts.analysis(), it, reach);
    Optional<JointObstacle> worst = worst(obstacles, it, gap);
    if (worst.isPresent()) {
      tell(it, worst.get(), "the joint", gap, facts, found);
      return;
    }
    sleeve.ifPresent(
        part -> {
          Length half = part.length().value().half();
          worst(obstacles, it, half)
              .map(o -> tell(it, o, "the sleeve " + part.name(), half, facts, found))
              .ifPresent(draft -> draft.severity(Severity.WARNING));
        });
  }

  private static Optional<JointObstacle> worst(
      List<JointObstacle> obstacles, SpliceJoint joint, Length half) {
    JointObstacle worst = null;
    Length least = Length.ZERO;
    for (JointObstacle obstacle : obstacles) {
      Length clearance = obstacle.clearance(joint, half);
      if (clearance.isShorterThan(least)) {
        worst = obstacle;
        least = clearance;
      }
    }
    return Optional.ofNullable(worst);
  }

  private static Findings.Draft tell(
      SpliceJoint it,
      JointObstacle obstacle,
      String what,
      Length half,
      WallFacts facts,
      Findings found) {
    Measures say = Measures.of(facts);
    Findings.Draft draft =
        found
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
    // the nearer side of it, with room for the sleeve
    Length room = SpliceMove.room(it, facts);
    Length up = obstacle.to().plus(room);
    Length down = obstacle.from().minus(room);
    boolean upwards = !up.minus(it.y()).isLongerThan(it.y().minus(down));
    Optional<JointPlace> place = JointPlace.of(facts.analysis(), it);
    SpliceMove.to(
            it,
            upwards ? up : down,
            y ->
                SpliceMove.clear(it, y, room, facts)
                    && place.map(band -> band.holds(y.toMetres())).orElse(true),
            facts)
        .ifPresent(draft::fix);
    return draft;
  }
}
