package mullwright.takeoff.nesting;

import java.util.ArrayList;
import java.util.List;

/**
 * Solves the linear programme over all patterns by adding those that pay at the current prices.
 *
 * <p>Column generation for cutting stock (textbook). After each solution the prices are scaled to
 * integers and a {@link Knapsack} looks for bars worth more than they cost: first a coarse table
 * that finds patterns quickly, and when that finds none the exact one, which also yields a bound in
 * whole numbers. Works on the whole problem and on what remains after some bars are fixed.
 */
final class ColumnGeneration {
  private static final double SCALE = 1 << 29;
  private static final double PAYS = 2e-8;
  private static final double PULL = 0.5;
  private static final double NUDGE = 1e-6;
  private static final double SHAKE = 1e-2;
  private static final int MOST_ADDED = 10;
  private static final int COARSE = 1200;
  private static final int COARSE_PAYS = 3000;

  /** How a run ended. */
  enum Outcome {
    /** No pattern pays: the programme is solved. */
    SOLVED,
    /** The solution is cheap enough for the caller. */
    ENOUGH,
    /** The bound is above what the caller can use. */
    HOPELESS,
    /** The effort is spent. */
    SPENT
  }

  private final CutModel model;
  private final Effort effort;
  private final PatternLp lp;
  private final Knapsack upper;
  private final Knapsack quick;
  private final long[] worth;
  private final double[] price;
  private final long[] most;
  private final List<Pattern> found = new ArrayList<>();
  private Bound bound;

  ColumnGeneration(CutModel model, Effort effort) {
    this.model = model;
    this.effort = effort;
    this.lp = new PatternLp(model, 1, effort);
    this.upper = Knapsack.upper(model, effort);
    this.quick = model.largestCapacity > COARSE_PAYS ? Knapsack.quick(model, COARSE, effort) : null;
    this.worth = new long[model.size()];
    this.price = new double[model.size()];
    this.most = new long[model.stocks()];
    this.bound = Bound.none(model);
  }

  /** A table that never underrates a bar. */
  Knapsack upper() {
    return upper;
  }

  PatternLp lp() {
    return lp;
  }

  /** The best bound of the last run, for what it was asked to cut. */
  Bound bound() {
    return bound;
  }

  /** Offers the patterns of a plan to the programme. */
  void seed(Draft draft) {
    for (Pattern pattern : draft.patterns()) {
      lp.add(pattern);
    }
  }

  /**
   * Solves for what is {@code wanted} from what is {@code left}.
   *
   * @param enough stop when a solution costs no more than this
   * @param hopeless stop when the bound exceeds this
   * @param rough whether to solve with exchange of pieces first: quicker when little is known yet
   */
  Outcome run(int[] wanted, int[] left, double enough, double hopeless, boolean rough) {
    bound = Bound.none(model);
    lp.setRight(wanted, left);
    for (int j = lp.firstPattern(); j < lp.columns(); j++) {
      lp.bar(j, !lp.pattern(j).within(wanted));
    }
    if (rough) {
      lp.exchange(true);
      Outcome first = generate(wanted, left, enough, hopeless);
      lp.exchange(false);
      if (first == Outcome.HOPELESS || first == Outcome.SPENT) {
        return first;
      }
    }
    return generate(wanted, left, enough, hopeless);
  }

  /**
   * Bounds from other best prices of the whole problem, and last their mean.
   *
   * <p>Where many prices are best, each shows other patterns to be of no use; the mean shows nearly
   * all of them at once.
   */
  List<Bound> variants(int number) {
    List<Bound> variants = new ArrayList<>();
    for (int seed = 2; seed < 2 + number; seed++) {
      lp.nudge(seed, 0, SHAKE);
      Outcome outcome = run(model.demand, model.available, -1, Double.MAX_VALUE, false);
      if (outcome != Outcome.SOLVED) {
        break;
      }
      variants.add(bound);
    }
    lp.nudge(1, NUDGE, NUDGE);
    return variants;
  }

  /**
   * The worth of the best bar of every stock of the whole problem at these prices; null if the
   * numbers are too large for the table.
   */
  long[] mostWorth(long[] whole) {
    double[] given = new double[whole.length];
    for (int i = 0; i < whole.length; i++) {
      given[i] = whole[i];
    }
    if (upper.ceiling(given, model.demand) >= Integer.MAX_VALUE / 2) {
      return null;
    }
    upper.run(whole, model.demand);
    long[] worths = new long[model.stocks()];
    for (int s = 0; s < worths.length; s++) {
      worths[s] = upper.worth(s);
    }
    return worths;
  }

  /** The bound of the mean of the prices of {@code bounds}. */
  Bound mean(List<Bound> bounds) {
    double dearest = Math.max(1, model.largestCost);
    for (int i = 0; i < price.length; i++) {
      price[i] = 0;
      for (Bound each : bounds) {
        price[i] += each.price()[i] / (double) each.scale() / dearest / bounds.size();
      }
    }
    long scale = wholePrices(upper, model.demand);
    upper.run(worth, model.demand);
    for (int s = 0; s < most.length; s++) {
      most[s] = upper.worth(s);
    }
    return Bound.of(model, model.demand, model.available, worth, scale, most);
  }

  private Outcome generate(int[] wanted, int[] left, double enough, double hopeless) {
    boolean coarse = quick != null;
    boolean centred = false;
    boolean fresh = true;
    double[] centre = new double[price.length];
    while (true) {
      if (fresh && !lp.solve() || effort.spent()) {
        return Outcome.SPENT;
      }
      if (lp.objective() <= enough + 1e-3) {
        return Outcome.ENOUGH;
      }
      found.clear();
      if (coarse) {
        long scale = scalePrices(quick, wanted, centre, 0);
        quick.run(worth, wanted);
        collect(quick, scale, left);
        coarse = found.size() > Math.min(3, model.size() / 8);
      }
      if (!coarse) {
        double weight = centred && fresh ? PULL : 0;
        long scale = scalePrices(upper, wanted, centre, weight);
        upper.run(worth, wanted);
        for (int s = 0; s < most.length; s++) {
          most[s] = upper.worth(s);
        }
        Bound next = Bound.of(model, wanted, left, worth, scale, most);
        if (next.exact() > bound.exact()) {
          bound = next;
          System.arraycopy(price, 0, centre, 0, price.length);
          centred = true;
        }
        if (bound.exact() > hopeless + 1e-7) {
          return Outcome.HOPELESS;
        }
        collect(upper, scale, left);
        if (weight > 0) {
          // what pays at the smoothed prices must pay at the programme's own
          found.removeIf(pattern -> !pays(pattern));
        }
        if (found.isEmpty()) {
          if (weight == 0) {
            return Outcome.SOLVED;
          }
          fresh = false;
          continue;
        }
      }
      fresh = true;
      for (Pattern pattern : found) {
        lp.add(pattern);
      }
    }
  }

  private boolean pays(Pattern pattern) {
    double worth = 0;
    for (int k = 0; k < pattern.part().length; k++) {
      worth += pattern.count()[k] * lp.price(pattern.part()[k]);
    }
    double dearest = Math.max(1, model.largestCost);
    return worth > model.cost[pattern.stock()] / dearest + lp.premium(pattern.stock()) + PAYS;
  }

  /** Puts whole prices into {@link #worth} and returns how many make one unit of cost. */
  private long scalePrices(Knapsack table, int[] wanted, double[] centre, double weight) {
    for (int i = 0; i < price.length; i++) {
      price[i] = wanted[i] > 0 ? Math.max(0, weight * centre[i] + (1 - weight) * lp.price(i)) : 0;
    }
    return wholePrices(table, wanted);
  }

  private long wholePrices(Knapsack table, int[] wanted) {
    double ceiling = Math.max(1, table.ceiling(price, wanted));
    double dearest = Math.max(1, model.largestCost);
    long scale = (long) Math.max(1, Math.min(SCALE, 4 * SCALE / (ceiling * 1.01)) / dearest);
    for (int i = 0; i < price.length; i++) {
      worth[i] = (long) (price[i] * dearest * scale);
    }
    return scale;
  }

  private void collect(Knapsack table, long scale, int[] left) {
    double dearest = Math.max(1, model.largestCost);
    for (int s = 0; s < model.stocks(); s++) {
      if (left[s] <= 0) {
        continue;
      }
      double allowed = scale * (model.cost[s] + dearest * (lp.premium(s) + PAYS));
      table.collect(
          s, (int) Math.min(Integer.MAX_VALUE, allowed), MOST_ADDED + model.size() / 10, found);
    }
  }
}
