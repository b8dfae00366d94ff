package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import mullwright.analysis.wall.JointMovement;
import mullwright.layout.SpliceJoint;
import mullwright.model.Origin;
import mullwright.quantity.Length;
import mullwright.syntax.ClauseWord;

/**
 * A splice whose gap is less than what must fit into it: heat, slab deflection and tolerance.
 *
 * <p>The two lengths press on one another and the wall buckles out of its plane. Statics and common
 * practice.
 */
@AutoService(Rule.class)
public final class SpliceGapTooSmall implements WallRule {
  @Override
  public About about() {
    return About.of(Group.SPLICE, Severity.ERROR);
  }

  @Override
  public void check(WallFacts facts, Findings found) {
    List<SpliceJoint> splices = facts.layout().splices();
    JointMovement[] tooSmall = new JointMovement[splices.size()];
    // enough for every splice the statement speaks of
    Map<Origin, Double> needed = new HashMap<>();
    for (SpliceJoint it : splices) {
      JointMovement.of(facts.analysis(), it)
          .ifPresent(
              movement -> {
                needed.merge(it.splice().origin(), movement.result().needed(), Math::max);
                if (movement.tooSmall()) {
                  tooSmall[it.index()] = movement;
                }
              });
    }
    Measures say = Measures.of(facts);
    for (SpliceJoint it : splices) {
      if (tooSmall[it.index()] != null) {
        tell(it, tooSmall[it.index()], needed.get(it.splice().origin()), say, facts, found);
      }
    }
  }

  private static void tell(
      SpliceJoint it,
      JointMovement movement,
      double needed,
      Measures say,
      WallFacts facts,
      Findings found) {
    Optional<Length> enough = say.enough(needed);
    var in = movement.result().input();
    Findings.Draft draft =
        found
            .at(it.splice().origin())
            .piece(it.name())
            .what(
                "The gap is "
                    + say.length(it.splice().gap().value())
                    + ", it needs "
                    + say.length(movement.result().needed())
                    + ": "
                    + say.length(movement.result().thermalClosing())
                    + " heat, "
                    + say.length(in.movement().slabDown())
                    + " slab deflection"
                    + (movement.slabStated() ? ", " : " (not stated), ")
                    + say.length(in.tolerance())
                    + " tolerance.")
            .mend("Make it " + enough.map(say::length).orElse(say.length(needed)) + " or more.")
            .measured(movement.gap())
            .limit(movement.needed())
            .related(movement.lower().use().origin(), "the lower length grows from here")
            .related(movement.upper().use().origin(), "the upper length grows from here");
    enough
        .map(length -> ClauseWord.GAP.spelling() + " " + say.atLeast().print(length))
        .flatMap(
            gap ->
                new StatementEdits(facts.text())
                    .setClause(it.splice().origin(), ClauseWord.GAP, gap)
                    .map(edit -> new Fix("Write " + gap, List.of(edit))))
        .ifPresent(draft::fix);
  }
}
