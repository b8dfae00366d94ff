package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.movement.SpliceBand;
import mullwright.analysis.wall.JointPlace;
import mullwright.layout.SpliceJoint;
import mullwright.model.Height;
import mullwright.quantity.Length;

/**
 * A splice outside the band near an anchor where the moment of a long run is small.
 *
 * <p>The sleeve is bent where it should only be sheared, and the span works as two loose ends. The
 * band, 0.15 to 0.25 of the span, is common practice.
 */
@AutoService(Rule.class)
public final class SpliceFarFromAnchor implements SpliceRule {
  @Override
  public About about() {
    return About.of(Group.SPLICE, Severity.WARNING);
  }

  @Override
  public void check(SpliceJoint it, WallFacts facts, Findings found) {
    JointPlace.of(facts.analysis(), it)
        .filter(place -> !place.inBand())
        .ifPresent(place -> tell(it, place, facts, found));
  }

  private static void tell(SpliceJoint it, JointPlace place, WallFacts facts, Findings found) {
    Measures say = Measures.of(facts);
    String line = facts.wall().grid().lines().get(it.line()).name();
    Findings.Draft draft =
        found
            .at(it.splice().origin())
            .piece(it.name())
            .what(
                "It stands "
                    + say.length(place.distance())
                    + " from the "
                    + Words.onLine(place.nearest().name(), line)
                    + ", "
                    + Measures.share(place.share())
                    + " of the "
                    + say.length(place.span())
                    + " span; the moment is small from "
                    + SpliceBand.NEAR
                    + " ("
                    + say.length(place.band().near())
                    + ") to "
                    + SpliceBand.FAR
                    + " ("
                    + say.length(place.band().far())
                    + ").")
            .mend(
                "Move it to about "
                    + say.length(say.round(Length.nearest(place.band().best())))
                    + " from the anchor.")
            .measured(place.measured())
            .limit(place.limit());
    better(it, place, facts, say).ifPresent(draft::fix);
  }

  // to the whole inch or centimetre near the best height, told from what the text tells it from
  private static Optional<Fix> better(
      SpliceJoint it, JointPlace place, WallFacts facts, Measures say) {
    Height at = it.splice().at();
    Length base = at.elevation().minus(at.offset());
    Length offset = say.round(Length.nearest(place.bestHeight()).minus(base));
    Length moved = base.plus(offset);
    boolean sameSide = offset.signum() != 0 && offset.signum() == at.offset().signum();
    if (at.base().isEmpty() || !sameSide || !place.holds(moved.toMetres())) {
      return Optional.empty();
    }
    return new StatementEdits(facts.text())
        .offset(it.splice().origin(), at.offset().signum() > 0, say.written(offset.abs()))
        .map(edit -> new Fix("Move it to " + say.written(offset.abs()), List.of(edit)));
  }
}
