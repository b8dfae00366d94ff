package mullwright.takeoff.cutting;

import java.util.List;
import java.util.Optional;
import mullwright.quantity.Length;
import mullwright.takeoff.nesting.NestingProblem;
import mullwright.takeoff.nesting.NestingResult.Planned;
import mullwright.takeoff.nesting.Refusal;

/**
 * How a pool is cut.
 *
 * @param bars the plan; equal bars stand together
 * @param tooLong pieces longer than every bar, left out of the plan
 * @param goal what was made as small as can be
 * @param problem what was solved, in ticks of {@link Length}
 * @param result the plan in those terms with its bound and certificate; empty if there is none
 * @param refusal why there is no plan, if there is none
 */
public record CutPlan(
    CutPool pool,
    List<CutBar> bars,
    List<CutPiece> tooLong,
    Goal goal,
    NestingProblem problem,
    Optional<Planned> result,
    Optional<Refusal> refusal) {
  /** What a plan makes as small as can be; bars on hand count nothing. */
  public enum Goal {
    /** Bars bought: there is one length to buy. */
    BARS,
    /** Length bought: there are several lengths and not each has a cost. */
    LENGTH,
    /** Cost of what is bought. */
    COST
  }

  public CutPlan {
    bars = List.copyOf(bars);
    tooLong = List.copyOf(tooLong);
  }

  /** True if no plan can do better. */
  public boolean proved() {
    return result.map(Planned::proved).orElse(false);
  }

  /** Where the goal is length: how much of it one unit of the problem's cost stands for. */
  public Length unitOfCost() {
    NestingProblem.Stock any = problem.stocks().get(0);
    return new Length(any.length() / any.cost());
  }

  /** Bars to buy. */
  public int bought() {
    return (int) bars.stream().filter(bar -> bar.lot().isEmpty()).count();
  }

  /** Total length of the bars to buy. */
  public Length boughtLength() {
    return sum(bars.stream().filter(bar -> bar.lot().isEmpty()).map(CutBar::stock).toList());
  }

  /** Total length of all bars cut, bought or on hand. */
  public Length barLength() {
    return sum(bars.stream().map(CutBar::stock).toList());
  }

  /** Total length of the pieces on the bars. */
  public Length cutLength() {
    return sum(bars.stream().flatMap(bar -> bar.pieces().stream()).map(CutPiece::length).toList());
  }

  /** Drops at least as long as the least one worth keeping. */
  public List<Length> kept() {
    return bars.stream().map(CutBar::drop).filter(this::keeps).toList();
  }

  /** True if a drop of that length goes back on the rack. */
  public boolean keeps(Length drop) {
    return drop.signum() > 0 && !drop.isShorterThan(pool.saw().leastDrop());
  }

  /** What becomes neither piece nor kept drop: kerfs, trimmed ends, short drops. */
  public Length waste() {
    return barLength().minus(cutLength()).minus(sum(kept()));
  }

  private static Length sum(List<Length> lengths) {
    return lengths.stream().reduce(Length.ZERO, Length::plus);
  }
}
