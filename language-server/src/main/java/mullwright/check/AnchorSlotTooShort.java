package mullwright.check;

import com.google.auto.service.AutoService;
import mullwright.analysis.wall.Inputs;
import mullwright.analysis.wall.SlotMovement;
import mullwright.layout.PlacedAnchor;

/**
 * A sliding anchor whose slot is too short for what the vertical moves past it.
 *
 * <p>The bolt reaches the end of the slot and the anchor takes weight, or locks the length against
 * heat. Common practice.
 */
@AutoService(Rule.class)
public final class AnchorSlotTooShort implements AnchorRule {
  @Override
  public About about() {
    return About.of(Group.ANCHOR, Severity.ERROR);
  }

  @Override
  public void check(PlacedAnchor it, WallFacts facts, Findings found) {
    SlotMovement.of(facts.analysis(), it)
        .filter(SlotMovement::tooShort)
        .ifPresent(slot -> tell(it, slot, facts, found));
  }

  private static void tell(PlacedAnchor it, SlotMovement slot, WallFacts facts, Findings found) {
    Measures say = Measures.of(facts);
    double needed = slot.result().needed();
    String enough = say.enough(needed).map(say.atLeast()::print).orElse(say.length(needed));
    Findings.Draft draft =
        found
            .at(it.use().origin())
            .piece(it.name())
            .what(
                "The slot of "
                    + it.part().orElseThrow().name()
                    + " is "
                    + say.length(slot.slot().value())
                    + ", it needs "
                    + say.length(needed)
                    + ": the bolt, "
                    + say.length(slot.result().input().up())
                    + " up, "
                    + say.length(slot.result().input().down())
                    + " down, "
                    + say.length(SlotMovement.ADJUSTMENT)
                    + " to install.")
            .mend("Take a part with a slot of " + enough + " or more.")
            .measured(Inputs.length("slot", slot.slot()))
            .limit(slot.needed())
            .related(slot.slot().origin(), "the slot")
            .related(slot.hangs().use().origin(), "the length grows from here");
    new AnchorParts(facts, it).slotOf(needed).ifPresent(draft::fix);
  }
}
