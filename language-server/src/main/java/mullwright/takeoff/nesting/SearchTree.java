package mullwright.takeoff.nesting;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * A search of all plans that cost no more than a target, written down step by step, so that anyone
 * can follow it and find that there is none.
 *
 * <p>A filling is what is cut from one bar. At prices that no filling beats, {@code scale * cost +
 * premium - worth} is what a bar loses; the losses of all bars of a plan add up to no more than
 * {@code scale * target - worth of all parts + sum of premium * available}. A filling that alone
 * loses more is in no such plan: the filters leave a list of fillings that is complete. The steps
 * then ask of one filling after the other how many bars have it, and close each case.
 *
 * @param target what no plan costs, or less
 * @param filters prices that hold for every bar
 * @param root the first step
 */
public record SearchTree(long target, List<Prices> filters, Step root) {
  public SearchTree {
    filters = List.copyOf(filters);
  }

  /**
   * Prices of parts, as in a {@link Certificate}.
   *
   * @param prices price of each part length; a length not named has price 0
   * @param scale units of price in one unit of cost, greater than 0
   * @param premiums one for each stock of the problem, 0 for unlimited stocks
   */
  public record Prices(SortedMap<Long, Long> prices, long scale, List<Long> premiums) {
    public Prices {
      prices = Collections.unmodifiableSortedMap(new TreeMap<>(prices));
      premiums = List.copyOf(premiums);
    }
  }

  /**
   * What is cut from one bar.
   *
   * @param stock index in the problem's stocks
   * @param pieces how many of each part length
   */
  public record Filling(int stock, SortedMap<Long, Integer> pieces) {
    public Filling {
      pieces = Collections.unmodifiableSortedMap(new TreeMap<>(pieces));
    }
  }

  /** A step: what is left of the parts after the bars settled on the way to it. */
  public sealed interface Step permits Over, Closed, Bare, Split {}

  /** The bars settled cost more than the target. */
  public record Over() implements Step {}

  /**
   * At these prices, which no filling left beats, what is left is worth more than the cost left.
   */
  public record Closed(Prices prices) implements Step {}

  /** Of the fillings left none may be used, since each alone loses more than can be lost. */
  public record Bare(Prices prices) implements Step {}

  /**
   * How many bars have a filling.
   *
   * @param prices at which fillings that lose more than can be lost are left out below
   * @param filling the filling asked for
   * @param bars the step that follows if 0, 1, 2 … bars have it, up to the most that can; none
   *     below has it again
   */
  public record Split(Prices prices, Filling filling, List<Step> bars) implements Step {
    public Split {
      bars = List.copyOf(bars);
    }
  }
}
