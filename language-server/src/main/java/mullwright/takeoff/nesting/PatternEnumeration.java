package mullwright.takeoff.nesting;

import java.util.ArrayList;
import java.util.List;

/**
 * Lists every pattern that a plan of a given cost may use.
 *
 * <p>At the prices of a {@link Bound} each bar of a plan loses {@code scale * cost + premium -
 * worth}, never less than 0, and the losses of all bars add up to {@code scale * cost of the plan -
 * worth of the bound}. A pattern that alone loses more than that is in no such plan. All in whole
 * numbers; patterns that leave room for further pieces are listed too, so that the plan may cut
 * every piece exactly once.
 */
final class PatternEnumeration {
  private final CutModel model;
  private final Bound bound;
  private final Knapsack table;
  private final Effort effort;
  private final int most;
  private final int[] counts;
  private final List<Pattern> found = new ArrayList<>();
  private long need;
  private int stock;
  private long steps;
  private boolean tooMany;

  private PatternEnumeration(CutModel model, Bound bound, Knapsack table, int most, Effort effort) {
    this.model = model;
    this.bound = bound;
    this.table = table;
    this.most = most;
    this.effort = effort;
    this.counts = new int[model.size()];
  }

  /**
   * All patterns of plans that cost at most {@code target}; null if there are more than {@code
   * most} or the effort is spent.
   *
   * @param table a table that never underrates a bar
   */
  static List<Pattern> list(
      CutModel model, Bound bound, long target, Knapsack table, int most, Effort effort) {
    PatternEnumeration run = new PatternEnumeration(model, bound, table, most, effort);
    table.run(bound.price(), model.demand);
    long loss = bound.loss(target);
    for (int s = 0; s < model.stocks() && !run.tooMany; s++) {
      run.stock = s;
      run.need = bound.scale() * model.cost[s] + bound.premium()[s] - loss;
      run.extend(0, model.capacity[s], table.capacity(s), model.pieces, 0);
    }
    effort.add(run.steps * 4);
    return run.tooMany ? null : run.found;
  }

  private void extend(int from, long room, int cells, int pieces, long worth) {
    if (worth >= need && pieces < model.pieces) {
      found.add(Pattern.of(stock, counts));
      tooMany |= found.size() > most;
    }
    steps++;
    if (tooMany || (steps & 0xfff) == 0) {
      effort.add(0x4000);
      steps = 0;
      tooMany |= effort.spent();
    }
    for (int i = from; i < counts.length && !tooMany; i++) {
      if (pieces == 0) {
        return;
      }
      int n = (int) Math.min(Math.min(model.demand[i], pieces), room / model.width[i]);
      for (int take = n; take > 0; take--) {
        long next = worth + take * bound.price()[i];
        int left = cells - take * table.width(i);
        if (next + table.narrower(i, pieces - take, left) >= need) {
          counts[i] = take;
          extend(i + 1, room - take * model.width[i], left, pieces - take, next);
        }
      }
      counts[i] = 0;
      if (worth + table.narrower(i, pieces, cells) < need) {
        return;
      }
    }
  }
}
