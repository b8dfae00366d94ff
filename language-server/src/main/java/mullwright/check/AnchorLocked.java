package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import mullwright.derivation.Derivation;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.VerticalPiece;
import mullwright.model.AnchorUse;
import mullwright.quantity.Kind;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;

/**
 * Two or more dead-load anchors on one length of vertical: it cannot grow with heat between them.
 *
 * <p>The metal buckles, or the anchors shear. Statics; one dead-load anchor a length is common
 * practice.
 */
@AutoService(Rule.class)
public final class AnchorLocked implements MemberRule {
  @Override
  public About about() {
    return About.of(Group.ANCHOR, Severity.ERROR);
  }

  @Override
  public void check(VerticalPiece it, WallFacts facts, Findings found) {
    List<PlacedAnchor> deadLoads = facts.analysis().holdOf(it).deadLoads();
    if (deadLoads.size() < 2) {
      return;
    }
    PlacedAnchor lowest = deadLoads.get(0);
    List<PlacedAnchor> others = deadLoads.subList(1, deadLoads.size());
    PlacedAnchor highest = others.get(others.size() - 1);
    Measures say = Measures.of(facts);
    Findings.Draft draft =
        found
            .at(others.get(0).use().origin())
            .piece(it.name())
            .what(
                deadLoads.size()
                    + " dead-load anchors lock it, at "
                    + Words.list(deadLoads.stream().map(a -> Words.place(a, facts)).toList())
                    + "; 1 is the most: "
                    + say.length(highest.y().minus(lowest.y()))
                    + " of it cannot grow with heat.")
            .mend("Make all but one wind-load anchors, or splice it between them.")
            .measured(count("dead-load anchors on the length", deadLoads.size(), "counted"))
            .limit(count("dead-load anchors at most", 1, "one, for the length to grow from it"))
            .related(lowest.use().origin(), "holds the weight too");
    new AnchorEdits(facts).turn(it, others, AnchorUse.Kind.WIND_LOAD).ifPresent(draft::fix);
  }

  private static Derivation count(String name, long count, String formula) {
    return Derivation.computed(
        name, Quantity.of(Rational.of(count)), Kind.RATIO, formula, "statics; common practice");
  }
}
