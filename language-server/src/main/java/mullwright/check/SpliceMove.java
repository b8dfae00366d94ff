package mullwright.check;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import mullwright.analysis.wall.JointObstacle;
import mullwright.layout.SpliceJoint;
import mullwright.layout.SystemPart;
import mullwright.model.Height;
import mullwright.quantity.Length;

/** The edit that puts a splice elsewhere, told from what the text tells it from. */
final class SpliceMove {
  private SpliceMove() {}

  /**
   * To the whole inch or centimetre nearest to a height that will do.
   *
   * @param target the height wanted
   * @param holds whether a height will do
   * @return empty if none near it does, or the text tells the height in another way
   */
  static Optional<Fix> to(SpliceJoint it, Length target, Predicate<Length> holds, WallFacts facts) {
    Measures say = Measures.of(facts);
    Height at = it.splice().at();
    if (at.base().isEmpty() || at.offset().signum() == 0) {
      return Optional.empty();
    }
    Length base = at.elevation().minus(at.offset());
    Length nearest = say.round(target.minus(base));
    for (Length offset : List.of(nearest, nearest.plus(say.step()), nearest.minus(say.step()))) {
      boolean sameSide = offset.signum() == at.offset().signum();
      if (sameSide && holds.test(base.plus(offset))) {
        String written = say.written(offset.abs());
        return new StatementEdits(facts.text())
            .offset(it.splice().origin(), offset.signum() > 0, written)
            .map(edit -> new Fix("Move it to " + written, List.of(edit)));
      }
    }
    return Optional.empty();
  }

  /** Half of what the joint and its sleeve take of the vertical. */
  static Length room(SpliceJoint it, WallFacts facts) {
    Length gap = it.splice().gap().value().half();
    return SystemPart.sleeve(facts.layout(), it)
        .map(part -> Length.max(gap, part.length().value().half()))
        .orElse(gap);
  }

  /** Whether nothing fixed to the vertical reaches into that stretch round a height. */
  static boolean clear(SpliceJoint it, Length y, Length half, WallFacts facts) {
    SpliceJoint moved = at(it, y);
    return JointObstacle.within(facts.analysis(), moved, half).stream()
        .allMatch(obstacle -> obstacle.clearance(moved, half).signum() >= 0);
  }

  /** The same joint at another height. */
  private static SpliceJoint at(SpliceJoint it, Length y) {
    return new SpliceJoint(
        it.index(), it.splice(), it.line(), y, it.below(), it.above(), it.name());
  }
}
