package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
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
public final class SpliceGapTooSmall implements SpliceRule {
  @Override
  public About about() {
    return About.of(Group.SPLICE, Severity.ERROR);
  }

  @Override
  public void check(SpliceJoint it, WallFacts facts, Findings found) {
    JointMovement.of(facts.analysis(), it)
        .filter(JointMovement::tooSmall)
        .ifPresent(movement -> tell(it, movement, facts, found));
  }

  private static void tell(
      SpliceJoint it, JointMovement movement, WallFacts facts, Findings found) {
    Measures say = Measures.of(facts);
    Length enough = enough(it, facts, say);
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
            .mend("Make it " + say.length(enough) + " or more.")
            .measured(movement.gap())
            .limit(movement.needed())
            .related(movement.lower().use().origin(), "the lower length grows from here")
            .related(movement.upper().use().origin(), "the upper length grows from here");
    String gap = ClauseWord.GAP.spelling() + " " + say.atLeast().print(enough);
    new StatementEdits(facts.text())
        .setClause(it.splice().origin(), ClauseWord.GAP, gap)
        .map(edit -> new Fix("Write " + gap, List.of(edit)))
        .ifPresent(draft::fix);
  }

  // enough for every splice the statement speaks of, to a sixteenth or a millimetre
  private static Length enough(SpliceJoint it, WallFacts facts, Measures say) {
    Origin statement = it.splice().origin();
    return facts.layout().splices().stream()
        .filter(other -> other.splice().origin().equals(statement))
        .map(other -> JointMovement.of(facts.analysis(), other))
        .flatMap(Optional::stream)
        .map(movement -> Length.nearest(movement.result().needed()))
        .max(Length::compareTo)
        .map(most -> say.atLeast().round(most))
        .orElseThrow();
  }
}
