package mullwright.takeoff.nesting;

import java.util.ArrayList;
import java.util.List;

/**
 * Looks for a plan by fixing bars of the linear programme's solution and solving what remains.
 *
 * <p>Whole parts of values are fixed at once, then the largest fraction is rounded up; patterns
 * that pay on the remainder are generated as the dive goes on. With discrepancies allowed, a dive
 * that fails returns to a decision and takes the next best pattern instead.
 */
final class Diving {
  private final CutModel model;
  private final ColumnGeneration generation;
  private final Totals totals;
  private final Effort effort;
  private Draft best;
  private long target;
  private long nodes;
  private long mostNodes;

  Diving(CutModel model, ColumnGeneration generation, Totals totals, Effort effort, Draft best) {
    this.model = model;
    this.generation = generation;
    this.totals = totals;
    this.effort = effort;
    this.best = best;
  }

  /** The cheapest plan known; null if none. */
  Draft best() {
    return best;
  }

  /**
   * Looks for a plan that costs no more than {@code atMost}.
   *
   * @param discrepancies how often a dive may leave the best choice
   * @return true if one was found
   */
  boolean dive(long atMost, int discrepancies, long nodeLimit) {
    target = atMost;
    nodes = 0;
    mostNodes = nodeLimit;
    return descend(new Draft(model), discrepancies);
  }

  private boolean descend(Draft draft, int discrepancies) {
    double room = target - draft.cost();
    if (room < 0 || nodes++ > mostNodes) {
      return false;
    }
    ColumnGeneration.Outcome outcome = generation.run(draft.wanted, draft.left, room, room, false);
    if (outcome == ColumnGeneration.Outcome.HOPELESS
        || outcome == ColumnGeneration.Outcome.SPENT
        || (outcome == ColumnGeneration.Outcome.SOLVED
            && totals.atLeast(draft.cost() + generation.bound().cost()) > target)) {
      return false;
    }
    PatternLp lp = generation.lp();
    Draft base = draft.copy();
    List<Choice> choices = new ArrayList<>();
    for (int i = 0; i < lp.rows(); i++) {
      int j = lp.basic(i);
      double x = lp.value(i);
      if (j < 0 || x < 1e-4 || j < lp.firstPattern() && j >= model.size() || lp.barred(j)) {
        continue;
      }
      int whole = (int) Math.floor(x + 1e-4);
      if (whole > 0) {
        base.cut(lp.pattern(j), whole);
      }
      if (x - whole > 1e-4) {
        choices.add(new Choice(lp.pattern(j), x - whole, lp.pattern(j).filled(model)));
      }
    }
    if (offer(base)) {
      return true;
    }
    if (base.pieces() == 0) {
      return false;
    }
    choices.sort(
        (a, b) -> {
          int byFraction = Double.compare(Math.rint(b.fraction * 1e3), Math.rint(a.fraction * 1e3));
          return byFraction != 0 ? byFraction : Long.compare(b.filled, a.filled);
        });
    int tries = 0;
    for (Choice choice : choices) {
      if (tries > discrepancies || effort.spent()) {
        return false;
      }
      Draft child = base.copy();
      child.cut(choice.pattern, 1);
      if (!overdrawn(child) && descend(child, discrepancies - tries)) {
        return true;
      }
      tries++;
    }
    return false;
  }

  private boolean overdrawn(Draft draft) {
    for (int s = 0; s < model.stocks(); s++) {
      if (draft.left[s] < 0) {
        return true;
      }
    }
    return false;
  }

  /** Completes a copy of {@code draft} at once and keeps it if it is the best; true on target. */
  private boolean offer(Draft draft) {
    Draft whole = draft.copy();
    if (Greedy.complete(whole, effort) && (best == null || whole.cost() < best.cost())) {
      best = whole;
    }
    return best != null && best.cost() <= target;
  }

  private record Choice(Pattern pattern, double fraction, long filled) {}
}
