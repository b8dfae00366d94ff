package mullwright.check;

import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;
import mullwright.analysis.wall.JointPlace;
import mullwright.derivation.Derivation;
import mullwright.layout.Cell;
import mullwright.layout.SpliceJoint;
import mullwright.model.LiteUse;
import mullwright.quantity.Length;

/**
 * A splice whose joint line shows beside a vision lite although a spandrel is in reach.
 *
 * <p>The open joint is seen from the room, and the lite beside it bridges two lengths that move
 * apart. Common practice.
 */
@AutoService(Rule.class)
public final class SpliceInVision implements SpliceRule {
  @Override
  public About about() {
    return About.of(Group.SPLICE, Severity.WARNING);
  }

  @Override
  public void check(SpliceJoint it, WallFacts facts, Findings found) {
    Optional<Cell> vision =
        visionAt(it.y(), facts.analysis().cellsBeside(it.line(), it.y(), it.y()));
    if (vision.isEmpty()) {
      return;
    }
    Optional<JointPlace> place = JointPlace.of(facts.analysis(), it);
    if (place.isEmpty()) {
      return;
    }
    double[] band = place.get().bandHeights();
    List<Cell> beside =
        facts.analysis().cellsBeside(it.line(), Length.nearest(band[0]), Length.nearest(band[1]));
    Optional<Cell> spandrel =
        beside.stream()
            .filter(cell -> inReach(cell, place.get(), beside))
            .min(java.util.Comparator.comparing(cell -> middle(cell).minus(it.y()).abs()));
    spandrel.ifPresent(other -> tell(it, vision.get(), other, facts, found));
  }

  private static Optional<Cell> visionAt(Length y, List<Cell> beside) {
    for (Cell cell : beside) {
      if (holds(cell, y) && vision(cell)) {
        return Optional.of(cell);
      }
    }
    return Optional.empty();
  }

  private static boolean vision(Cell cell) {
    return cell.use().filter(LiteUse::vision).isPresent();
  }

  private static boolean holds(Cell cell, Length y) {
    return cell.bottom().isShorterThan(y) && y.isShorterThan(cell.top());
  }

  private static Length middle(Cell cell) {
    return cell.bottom().plus(cell.top()).half();
  }

  // a spandrel that reaches into the band, with no vision lite on the line's other side there
  private static boolean inReach(Cell cell, JointPlace place, List<Cell> beside) {
    if (cell.use().filter(use -> !use.vision()).isEmpty()) {
      return false;
    }
    Length from = Length.max(cell.bottom(), Length.nearest(place.bandHeights()[0]));
    Length to = Length.min(cell.top(), Length.nearest(place.bandHeights()[1]));
    return from.isShorterThan(to)
        && beside.stream()
            .filter(SpliceInVision::vision)
            .noneMatch(v -> v.bottom().isShorterThan(to) && from.isShorterThan(v.top()));
  }

  private static void tell(
      SpliceJoint it, Cell vision, Cell spandrel, WallFacts facts, Findings found) {
    Measures say = Measures.of(facts);
    Findings.Draft draft =
        found
            .at(it.splice().origin())
            .piece(it.name())
            .what(
                "At "
                    + say.length(it.y())
                    + " it shows beside the "
                    + vision.name()
                    + ", vision from "
                    + say.length(vision.bottom())
                    + " to "
                    + say.length(vision.top())
                    + ".")
            .mend(
                "Move it beside the spandrel "
                    + spandrel.name()
                    + ", between "
                    + say.length(spandrel.bottom())
                    + " and "
                    + say.length(spandrel.top())
                    + ".")
            .measured(Derivation.stated("height of the splice", it.y(), it.splice().at().origin()))
            .limit(
                Derivation.computed(
                    "nearest height beside a spandrel",
                    it.y().isShorterThan(spandrel.bottom()) ? spandrel.bottom() : spandrel.top(),
                    "edge of its daylight opening",
                    "common practice"))
            .related(vision.use().orElseThrow().origin(), "the vision lite")
            .related(spandrel.use().orElseThrow().origin(), "the spandrel in reach");
    JointPlace.of(facts.analysis(), it)
        .flatMap(
            place ->
                SpliceMove.to(
                    it,
                    Length.max(spandrel.bottom(), Length.nearest(place.bandHeights()[0]))
                        .plus(Length.min(spandrel.top(), Length.nearest(place.bandHeights()[1])))
                        .half(),
                    y ->
                        holds(spandrel, y)
                            && place.holds(y.toMetres())
                            && SpliceMove.clear(it, y, SpliceMove.room(it, facts), facts),
                    facts))
        .ifPresent(draft::fix);
  }
}
