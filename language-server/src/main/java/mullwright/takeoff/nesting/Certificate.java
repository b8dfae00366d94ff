package mullwright.takeoff.nesting;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Integer prices that show how little any plan can cost.
 *
 * <p>Every part length has a price and every limited stock a premium. If no bar of any stock can
 * hold parts worth more than {@code scale * cost + premium}, and no bar holds more of a length than
 * is wanted in all, then any plan costs at least {@code (sum of price * count - sum of premium *
 * available) / scale}: weak duality of linear programming, with Farley's division for the scale.
 * Costs are integers and a total is a sum of stock costs, so the quotient is raised to the next
 * total that bars can have.
 *
 * <p>Where there are several stocks, {@link Rule rules} may say more: at other prices, what a bar
 * of each stock can be worth at most, so that any plan has enough bars for the worth of all parts.
 * If all numbers of bars that cost less than the bound break one of the rules, no plan does.
 *
 * <p>Where prices and rules leave plans possible, a {@link SearchTree} may show, case by case, that
 * none of them is one.
 *
 * @param prices price of each part length; a length not named has price 0
 * @param scale units of price in one unit of cost, greater than 0
 * @param premiums one for each stock of the problem, 0 for unlimited stocks
 * @param bound no plan costs less than this
 * @param rules on the numbers of bars; empty if the prices alone show the bound
 * @param search that shows the bound where prices and rules do not
 */
public record Certificate(
    SortedMap<Long, Long> prices,
    long scale,
    List<Long> premiums,
    long bound,
    List<Rule> rules,
    Optional<SearchTree> search) {
  /** A bound shown without a search. */
  public Certificate(
      SortedMap<Long, Long> prices, long scale, List<Long> premiums, long bound, List<Rule> rules) {
    this(prices, scale, premiums, bound, rules, Optional.empty());
  }

  /** The same with a search that shows a higher bound. */
  Certificate with(SearchTree tree, long higher) {
    return new Certificate(prices, scale, premiums, higher, rules, Optional.of(tree));
  }

  /**
   * {@code sum of weight * bars >= sum of price * count} for every plan.
   *
   * @param prices price of each part length; a length not named has price 0
   * @param weights for each stock of the problem, no less than any bar of it can be worth
   */
  public record Rule(SortedMap<Long, Long> prices, List<Long> weights) {
    public Rule {
      prices = Collections.unmodifiableSortedMap(new TreeMap<>(prices));
      weights = List.copyOf(weights);
    }
  }

  public Certificate {
    prices = Collections.unmodifiableSortedMap(new TreeMap<>(prices));
    premiums = List.copyOf(premiums);
    rules = List.copyOf(rules);
  }

  /** The claim in words. */
  public String statement() {
    if (search.isPresent()) {
      return "All ways to combine the fillings a plan cheaper than "
          + bound
          + " may use are gone through, step by step.";
    }
    return rules.isEmpty()
        ? "No bar is worth more than its cost at these prices, so no plan costs less than "
            + bound
            + "."
        : "All numbers of bars that cost less than "
            + bound
            + " break one of "
            + rules.size()
            + " rules: at its prices they are worth less than the parts.";
  }
}
