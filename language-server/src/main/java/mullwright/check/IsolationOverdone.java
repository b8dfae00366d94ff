package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.metal.MetalContact;
import mullwright.analysis.wall.PartContact;
import mullwright.layout.PlacedAnchor;
import mullwright.model.AnchorUse;
import mullwright.syntax.ClauseWord;

/**
 * An anchor isolated where its metals need nothing between.
 *
 * <p>It costs a part and an hour at every anchor. Aluminum Design Manual, section M.7; anodic-index
 * practice.
 */
@AutoService(Rule.class)
public final class IsolationOverdone implements AnchorRule {
  @Override
  public About about() {
    return About.of(Group.ISOLATION, Severity.INFORMATION);
  }

  @Override
  public void check(PlacedAnchor it, WallFacts facts, Findings found) {
    // where the vertical slides, what lies between also lets it slide
    if (it.use().isolation().isEmpty() || it.use().kind() != AnchorUse.Kind.DEAD_LOAD) {
      return;
    }
    List<PartContact> faces =
        facts.analysis().contacts().of(it).stream().filter(c -> !c.fastener()).toList();
    boolean all =
        !faces.isEmpty() && faces.stream().allMatch(c -> c.is(MetalContact.State.OVERDONE));
    if (all) {
      tell(it, faces.get(0), facts, found);
    }
  }

  private static void tell(PlacedAnchor it, PartContact contact, WallFacts facts, Findings found) {
    MetalContact.Result result = contact.result().orElseThrow();
    Findings.Draft draft =
        found
            .at(it.use().origin())
            .piece(it.name())
            .what(
                Words.quoted(it.use().isolation().orElseThrow().value())
                    + " lies between "
                    + contact.metal().value()
                    + " and "
                    + contact.profileMetal().value()
                    + ", and nothing need: "
                    + result.rule().words()
                    + "; source: "
                    + result.rule().source()
                    + ".")
            .mend("Leave it out, unless it is there for another reason.")
            .related(contact.metal().origin(), "its metal");
    Optional<Fix.Edit> edit =
        new StatementEdits(facts.text()).removeClause(it.use().origin(), ClauseWord.ISOLATED_BY);
    edit.map(e -> new Fix("Leave the isolation out", List.of(e))).ifPresent(draft::fix);
  }
}
