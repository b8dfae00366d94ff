package mullwright.takeoff.nesting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import mullwright.takeoff.nesting.NestingProblem.Stock;

/**
 * Looks for the cheapest plan by the numbers of bars it has of each stock.
 *
 * <p>The cheapest numbers that {@link BarCounts} leaves possible are tried first: the linear
 * programme with just these bars either yields prices that rule them out, and others with them, or
 * a dive that looks for a plan. A plan found at the cheapest numbers left is best; numbers without
 * plan or rule keep the bound where it is, while dearer ones may still give a better plan.
 */
final class CountSearch {
  private static final int DIVE_NODES = 60;
  private static final int FIRST_DISCREPANCIES = 1;
  private static final int MORE_DISCREPANCIES = 3;
  private static final int MOST_ROUNDS = 6;

  private final NestingProblem problem;
  private final CutModel model;
  private final ColumnGeneration generation;
  private final BarCounts counts;
  private final Effort effort;
  private final List<int[]> unsettled = new ArrayList<>();
  private Draft best;
  private long lower;

  CountSearch(
      NestingProblem problem,
      CutModel model,
      ColumnGeneration generation,
      Effort effort,
      Draft best,
      List<Bound> bounds) {
    this.problem = problem;
    this.model = model;
    this.generation = generation;
    this.effort = effort;
    this.best = best;
    this.counts = new BarCounts(model, effort);
    for (Bound bound : bounds) {
      rule(bound.price());
    }
  }

  /** True if there are stocks to choose from and not too many ways to do so. */
  boolean useful() {
    return counts.few(best.cost());
  }

  Draft best() {
    return best;
  }

  /** No plan costs less. */
  long lower() {
    return lower;
  }

  /** Rules by which no numbers of bars that cost less than {@link #lower} are left. */
  List<BarCounts.Rule> rules() {
    return counts.needed(lower);
  }

  /** Goes on until the plan is proved, the effort spent or everything tried. */
  void run() {
    while (!effort.spent() && lower < best.cost()) {
      int[] next = counts.cheapest(best.cost());
      if (next == null) {
        break;
      }
      if (unsettled.isEmpty()) {
        lower = Math.max(lower, counts.cost(next));
      }
      if (!attempt(next, FIRST_DISCREPANCIES)) {
        unsettled.add(next);
        counts.leave(next);
      }
    }
    if (effort.spent()) {
      return;
    }
    if (unsettled.isEmpty()) {
      lower = Math.max(lower, best.cost());
    } else {
      insist();
    }
  }

  /** Tries again, harder, where neither a plan nor a rule was found. */
  private void insist() {
    for (int round = 1; round <= MOST_ROUNDS; round++) {
      for (int[] bars : unsettled) {
        if (effort.spent() || counts.cost(bars) >= best.cost()) {
          break;
        }
        attempt(bars, round * MORE_DISCREPANCIES);
      }
    }
  }

  /** True if these numbers of bars are settled: by a rule against them or by a plan. */
  private boolean attempt(int[] bars, int discrepancies) {
    CutModel with = with(bars);
    if (with.stocks() == 0) {
      return false;
    }
    int[] whole = new int[with.stocks()];
    ColumnGeneration columns = columns(with, whole);
    long target = counts.cost(bars);
    ColumnGeneration.Outcome outcome =
        columns.run(with.demand, with.available, target, target, false);
    if (outcome == ColumnGeneration.Outcome.SPENT) {
      return false;
    }
    if (columns.bound().loss(target) < 0 && rule(columns.bound().price()) && breaks(bars)) {
      return true;
    }
    Totals totals = new Totals(with, target + with.largestCost);
    Diving diving = new Diving(with, columns, totals, effort, null);
    for (int d = 0; d <= discrepancies && !effort.spent(); d++) {
      if (diving.dive(target, d, DIVE_NODES)) {
        take(diving.best(), whole);
        return true;
      }
    }
    return false;
  }

  /** The problem with just these bars. */
  private CutModel with(int[] bars) {
    List<Stock> stocks = new ArrayList<>(problem.stocks());
    for (int s = 0; s < model.stocks(); s++) {
      Stock stock = stocks.get(model.stock[s]);
      stocks.set(model.stock[s], new Stock(stock.length(), stock.cost(), bars[s]));
    }
    return new CutModel(
        new NestingProblem(
            stocks, problem.parts(), problem.kerf(), problem.trim(), problem.piecesPerBar()));
  }

  /**
   * A programme for these bars that knows the patterns known so far.
   *
   * @param whole takes the index in the whole model of each stock
   */
  private ColumnGeneration columns(CutModel with, int[] whole) {
    int[] part = new int[model.stocks()];
    Arrays.fill(part, -1);
    for (int t = 0; t < whole.length; t++) {
      for (int s = 0; s < part.length; s++) {
        if (with.stock[t] == model.stock[s]) {
          part[s] = t;
          whole[t] = s;
        }
      }
    }
    ColumnGeneration columns = new ColumnGeneration(with, effort);
    PatternLp lp = generation.lp();
    for (int j = lp.firstPattern(); j < lp.columns(); j++) {
      Pattern pattern = lp.pattern(j);
      if (part[pattern.stock()] >= 0) {
        columns.lp().add(new Pattern(part[pattern.stock()], pattern.part(), pattern.count()));
      }
    }
    return columns;
  }

  /** Keeps a plan of some bars if it is the best. */
  private void take(Draft found, int[] whole) {
    Draft plan = new Draft(model);
    for (int p = 0; p < found.patterns().size(); p++) {
      Pattern pattern = found.patterns().get(p);
      plan.cut(
          new Pattern(whole[pattern.stock()], pattern.part(), pattern.count()), found.times(p));
    }
    if (plan.complete() && plan.cost() < best.cost()) {
      best = plan;
    }
  }

  /** Adds the rule of these prices, with the worth of the best bar of every stock. */
  private boolean rule(long[] price) {
    long[] weight = generation.mostWorth(price);
    if (weight == null) {
      return false;
    }
    long worth = 0;
    for (int i = 0; i < price.length; i++) {
      worth = Math.addExact(worth, Math.multiplyExact(price[i], (long) model.demand[i]));
    }
    counts.add(new BarCounts.Rule(price.clone(), weight, worth));
    return true;
  }

  private boolean breaks(int[] bars) {
    BarCounts.Rule rule = counts.rules().get(counts.rules().size() - 1);
    long sum = 0;
    for (int s = 0; s < bars.length; s++) {
      sum += rule.weight()[s] * bars[s];
    }
    return sum < rule.worth();
  }
}
