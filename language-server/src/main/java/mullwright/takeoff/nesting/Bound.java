package mullwright.takeoff.nesting;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Integer prices that bound the cost of every plan of a model, in whole numbers throughout.
 *
 * @param price of each width, at least 0
 * @param scale units of price in one unit of cost
 * @param premium of each stock, 0 unless limited
 * @param worth {@code sum of price * demand - sum of premium * available}, so that no plan costs
 *     less than {@code worth / scale}
 */
record Bound(long[] price, long scale, long[] premium, long worth) {

  /** The bound that says nothing: no plan costs less than 0. */
  static Bound none(CutModel model) {
    return new Bound(new long[model.size()], 1, new long[model.stocks()], 0);
  }

  /**
   * The best bound of given prices when a bar of stock {@code s} is worth at most {@code most[s]}.
   *
   * <p>{@code demand} and {@code left} are those of the model, or of what remains of it.
   *
   * <p>Limited stocks pay for their excess worth by a premium; if an unlimited stock has any, the
   * scale is raised until it has not (the usual division that makes prices feasible).
   */
  static Bound of(CutModel model, int[] demand, int[] left, long[] price, long scale, long[] most) {
    long raised = scale;
    for (int s = 0; s < model.stocks(); s++) {
      if (!model.limited(s) && most[s] > raised * model.cost[s]) {
        raised = (most[s] + model.cost[s] - 1) / model.cost[s];
      }
    }
    long worth = 0;
    for (int i = 0; i < price.length; i++) {
      worth = Math.addExact(worth, Math.multiplyExact(price[i], (long) demand[i]));
    }
    long[] premium = new long[model.stocks()];
    for (int s = 0; s < model.stocks(); s++) {
      if (model.limited(s)) {
        premium[s] = Math.max(0, most[s] - Math.multiplyExact(raised, model.cost[s]));
        worth = Math.subtractExact(worth, Math.multiplyExact(premium[s], (long) left[s]));
      }
    }
    return new Bound(price.clone(), raised, premium, worth);
  }

  /**
   * What a bar cut by {@code pattern} loses at these prices.
   *
   * <p>The losses of all bars of a plan add up to no more than {@link #loss} of its cost.
   */
  long loss(CutModel model, Pattern pattern) {
    long sum = scale * model.cost[pattern.stock()] + premium[pattern.stock()];
    for (int k = 0; k < pattern.part().length; k++) {
      sum -= price[pattern.part()[k]] * pattern.count()[k];
    }
    return sum;
  }

  /** What all bars of a plan of cost {@code target} can lose together at these prices. */
  long loss(long target) {
    return Math.subtractExact(Math.multiplyExact(scale, target), worth);
  }

  /** The least integer cost these prices allow. */
  long cost() {
    return worth <= 0 ? 0 : (worth - 1) / scale + 1;
  }

  /** The bound before rounding. */
  double exact() {
    return worth / (double) scale;
  }

  /** Puts the prices in the caller's terms. */
  Certificate certificate(CutModel model, NestingProblem problem, Totals totals) {
    return new Certificate(
        prices(model, price),
        scale,
        stocks(model, problem, premium),
        totals.atLeast(cost()),
        List.of());
  }

  /** The prices alone, in the caller's terms. */
  SearchTree.Prices prices(CutModel model, NestingProblem problem) {
    return new SearchTree.Prices(prices(model, price), scale, stocks(model, problem, premium));
  }

  /** This bound made sharper by rules on the numbers of bars, in the caller's terms. */
  Certificate certificate(
      CutModel model, NestingProblem problem, long ruled, List<BarCounts.Rule> rules) {
    return new Certificate(
        prices(model, price),
        scale,
        stocks(model, problem, premium),
        ruled,
        rules.stream()
            .map(
                rule ->
                    new Certificate.Rule(
                        prices(model, rule.price()), stocks(model, problem, rule.weight())))
            .toList());
  }

  private static SortedMap<Long, Long> prices(CutModel model, long[] price) {
    SortedMap<Long, Long> prices = new TreeMap<>();
    for (int i = 0; i < price.length; i++) {
      if (price[i] > 0) {
        prices.put(model.length[i], price[i]);
      }
    }
    return prices;
  }

  private static List<Long> stocks(CutModel model, NestingProblem problem, long[] numbers) {
    List<Long> all = new ArrayList<>();
    for (int s = 0; s < problem.stocks().size(); s++) {
      all.add(0L);
    }
    for (int s = 0; s < numbers.length; s++) {
      if (s != model.shortage) {
        all.set(model.stock[s], numbers[s]);
      }
    }
    return all;
  }
}
