package mullwright.takeoff.nesting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What is known of the number of bars of each stock that any plan must have.
 *
 * <p>Prices say more than a cost: if a bar of stock {@code s} never holds pieces worth more than
 * {@code weight[s]}, then every plan has {@code sum of weight * bars >= worth of all pieces}. Such
 * rules together leave few numbers of bars possible, and the cheapest of these bounds the cost of
 * every plan, in whole numbers throughout.
 */
final class BarCounts {
  /** Most numbers of bars looked at to find the cheapest. */
  static final long MOST_VECTORS = 300_000;

  /**
   * A rule.
   *
   * @param price of each width
   * @param weight of a bar of each stock
   * @param worth of all pieces at these prices
   */
  record Rule(long[] price, long[] weight, long worth) {}

  private final CutModel model;
  private final Effort effort;
  private final List<Rule> rules = new ArrayList<>();
  private final List<int[]> left = new ArrayList<>();

  /** Stocks whose number of bars is to be chosen; those that cost nothing are all used. */
  private final int[] chosen;

  private long bestCost;
  private int[] best;

  BarCounts(CutModel model, Effort effort) {
    this.model = model;
    this.effort = effort;
    int[] all = new int[model.stocks()];
    int n = 0;
    for (int s = 0; s < model.stocks(); s++) {
      if (s != model.shortage && model.cost[s] > 0) {
        all[n++] = s;
      }
    }
    // the dearest last: its number follows from the others
    this.chosen = Arrays.copyOf(all, n);
  }

  /** True if the numbers of bars that cost less than {@code cost} are few enough to go through. */
  boolean few(long cost) {
    if (chosen.length < 2 || model.shortage >= 0) {
      return false;
    }
    long vectors = 1;
    for (int k = 0; k + 1 < chosen.length; k++) {
      vectors *= 1 + Math.min(model.available[chosen[k]], cost / model.cost[chosen[k]]);
      if (vectors > MOST_VECTORS) {
        return false;
      }
    }
    return true;
  }

  void add(Rule rule) {
    rules.add(rule);
  }

  List<Rule> rules() {
    return rules;
  }

  /**
   * Enough of the rules to show that no plan costs less than {@code cost}, without those that are
   * not needed; empty if they do not show it.
   */
  List<Rule> needed(long cost) {
    BarCounts some = new BarCounts(model, effort);
    some.rules.addAll(rules);
    if (some.cheapest(cost) != null) {
      return List.of();
    }
    for (int r = 0; r < some.rules.size() && !effort.spent(); ) {
      Rule rule = some.rules.remove(r);
      if (some.cheapest(cost) != null) {
        some.rules.add(r++, rule);
      }
    }
    return List.copyOf(some.rules);
  }

  /** Passes over these numbers of bars from now on. */
  void leave(int[] counts) {
    left.add(counts);
  }

  /**
   * The cheapest numbers of bars that break no rule, are not left and cost less than {@code cost};
   * null if there are none. Stocks that cost nothing stand at all their bars.
   */
  int[] cheapest(long cost) {
    bestCost = cost;
    best = null;
    int[] counts = new int[model.stocks()];
    long[] need = new long[rules.size()];
    for (int r = 0; r < need.length; r++) {
      need[r] = rules.get(r).worth();
    }
    for (int s = 0; s < model.stocks(); s++) {
      if (s != model.shortage && model.cost[s] == 0) {
        counts[s] = model.available[s];
        for (int r = 0; r < need.length; r++) {
          need[r] -= Math.multiplyExact(rules.get(r).weight()[s], (long) counts[s]);
        }
      }
    }
    choose(0, counts, need, 0);
    return best;
  }

  long cost(int[] counts) {
    long sum = 0;
    for (int s = 0; s < counts.length; s++) {
      sum += counts[s] * (s == model.shortage ? 0 : model.cost[s]);
    }
    return sum;
  }

  private void choose(int k, int[] counts, long[] need, long cost) {
    int s = chosen[k];
    long least = 0;
    if (k + 1 == chosen.length) {
      effort.add(4 + need.length);
      for (int r = 0; r < need.length; r++) {
        long weight = rules.get(r).weight()[s];
        if (need[r] > 0) {
          if (weight == 0) {
            return;
          }
          least = Math.max(least, (need[r] - 1) / weight + 1);
        }
      }
    }
    long[] rest = need.clone();
    for (int r = 0; r < rest.length; r++) {
      rest[r] -= least * rules.get(r).weight()[s];
    }
    for (long n = least; n <= model.available[s]; n++) {
      long now = cost + n * model.cost[s];
      if (now >= bestCost) {
        return;
      }
      counts[s] = (int) n;
      if (k + 1 < chosen.length) {
        choose(k + 1, counts, rest, now);
        for (int r = 0; r < rest.length; r++) {
          rest[r] -= rules.get(r).weight()[s];
        }
      } else if (!isLeft(counts)) {
        bestCost = now;
        best = counts.clone();
        return;
      }
    }
    counts[s] = 0;
  }

  private boolean isLeft(int[] counts) {
    for (int[] each : left) {
      if (Arrays.equals(each, counts)) {
        return true;
      }
    }
    return false;
  }
}
