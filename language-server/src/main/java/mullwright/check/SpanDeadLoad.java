package mullwright.check;

import com.google.auto.service.AutoService;
import mullwright.analysis.deflection.DeadLoadLimit;
import mullwright.analysis.wall.WeightSag;
import mullwright.layout.HorizontalPiece;

/**
 * A horizontal that sags under the glass on it further than the edge of the glass allows.
 *
 * <p>The lite over it leaves its pocket at the head, the horizontal comes to rest on the lite under
 * it. Usual specification text and common practice. An aid to drafting: a licensed engineer and the
 * local code govern.
 */
@AutoService(Rule.class)
public final class SpanDeadLoad implements HorizontalRule {
  @Override
  public About about() {
    return About.of(Group.SPAN, Severity.ERROR);
  }

  @Override
  public void check(HorizontalPiece it, WallFacts facts, Findings found) {
    WeightSag.of(facts.analysis(), facts.analysis().spanOf(it))
        .filter(WeightSag::passed)
        .ifPresent(sag -> tell(it, sag, facts, found));
  }

  private static void tell(HorizontalPiece it, WeightSag sag, WallFacts facts, Findings found) {
    Measures say = Measures.of(facts);
    found
        .at(it.origin())
        .piece(it.name())
        .what(
            "It sags "
                + say.length(sag.sag().size())
                + " under "
                + say.force(sag.span().glassWeight())
                + " of glass"
                + (sag.span().borneWeight() > 0
                    ? ", " + say.force(sag.span().borneWeight()) + " of the verticals it bears"
                    : "")
                + " and its own weight over "
                + say.length(sag.span().length())
                + "; the limit is "
                + say.length(sag.limit().limit())
                + (sag.limit().rule().equals(DeadLoadLimit.LONG_SPAN)
                    ? "."
                    : " (" + sag.limit().rule().words() + ")."))
        .mend(
            "Take a profile that is stiffer in the plane of the wall, or set the blocks nearer to"
                + " the ends.")
        .measured(sag.measured())
        .limit(sag.explain());
  }
}
