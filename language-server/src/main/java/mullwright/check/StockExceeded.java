package mullwright.check;

import com.google.auto.service.AutoService;
import mullwright.analysis.wall.StockReach;
import mullwright.derivation.Derivation;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.VerticalPiece;
import mullwright.model.Origin;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * A piece longer than can be cut from the longest stock length of its profile.
 *
 * <p>It cannot be bought as one length. Both ends of a bar are trimmed before a piece is cut.
 */
@AutoService(Rule.class)
public final class StockExceeded implements MemberRule, HorizontalRule {
  @Override
  public About about() {
    return About.of(Group.SPAN, Severity.ERROR);
  }

  @Override
  public void check(VerticalPiece it, WallFacts facts, Findings found) {
    String mend = "Splice it, or add a longer stock length to the profile.";
    check(it.name(), it.length(), it.profile(), it.origin(), mend, facts, found);
  }

  @Override
  public void check(HorizontalPiece it, WallFacts facts, Findings found) {
    String mend = "Put a vertical between, or add a longer stock length to the profile.";
    check(it.name(), it.length(), it.profile(), it.origin(), mend, facts, found);
  }

  private static void check(
      String name,
      Length length,
      Part.Profile profile,
      Origin origin,
      String mend,
      WallFacts facts,
      Findings found) {
    StockReach.of(profile, facts.wall())
        .filter(reach -> length.isLongerThan(reach.value()))
        .ifPresent(
            reach -> {
              Measures say = Measures.of(facts);
              found
                  .at(origin)
                  .piece(name)
                  .what(
                      "It is "
                          + say.length(length)
                          + " long; the longest stock of "
                          + profile.name()
                          + ", "
                          + say.length(reach.longest().value())
                          + ", gives "
                          + say.length(reach.value())
                          + ".")
                  .mend(mend)
                  .measured(
                      Derivation.computed(
                          "cut length", length, "end to end", "conventions of measure"))
                  .limit(reach.explain())
                  .related(reach.longest().origin(), "the longest stock length");
            });
  }
}
