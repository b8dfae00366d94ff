package mullwright.takeoff.nesting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import mullwright.takeoff.nesting.NestingProblem.Stock;

/**
 * Follows a {@link SearchTree} step by step, sharing nothing with the solver.
 *
 * <p>It lists all fillings the filters leave by itself, from the problem alone, and holds every
 * step to its word in integer arithmetic that fails rather than overflows.
 */
final class SearchTreeCheck {
  /** Most fillings that are listed. */
  private static final int MOST_FILLINGS = 100_000;

  private final NestingProblem problem;
  private final long target;
  private final long[] length;
  private final int[] wanted;
  private final List<int[]> pieces = new ArrayList<>();
  private final List<Integer> stocks = new ArrayList<>();

  /** Prices by index of length, with what they are held against. */
  private record Held(long[] price, long scale, long[] premium) {}

  private static final class Wrong extends Exception {
    private static final long serialVersionUID = 1L;

    Wrong(String what) {
      super(what, null, false, false);
    }
  }

  private SearchTreeCheck(NestingProblem problem, SortedMap<Long, Integer> wanted, long target) {
    this.problem = problem;
    this.target = target;
    this.length = new long[wanted.size()];
    this.wanted = new int[wanted.size()];
    int at = 0;
    for (Map.Entry<Long, Integer> entry : wanted.entrySet()) {
      // the longest first: few fit, so that lists end early
      length[length.length - 1 - at] = entry.getKey();
      this.wanted[length.length - 1 - at++] = entry.getValue();
    }
  }

  /**
   * What is wrong with the search; empty if it shows that no plan costs its target or less.
   *
   * @param wanted how many of each part length
   * @throws ArithmeticException if sums leave the range of 64 bits
   */
  static Optional<String> fault(
      NestingProblem problem, SortedMap<Long, Integer> wanted, SearchTree tree) {
    try {
      new SearchTreeCheck(problem, wanted, tree.target()).follow(tree);
      return Optional.empty();
    } catch (Wrong wrong) {
      return Optional.of("search: " + wrong.getMessage());
    }
  }

  private void follow(SearchTree tree) throws Wrong {
    if (tree.filters().isEmpty()) {
      throw new Wrong("it has no filter");
    }
    List<Held> filters = new ArrayList<>();
    for (SearchTree.Prices filter : tree.filters()) {
      Held held = held(filter);
      holdsForEveryBar(filter, held);
      if (budget(held, wanted, all(), 0) < 0) {
        return;
      }
      filters.add(held);
    }
    list(filters.get(0));
    boolean[] out = new boolean[pieces.size()];
    for (Held filter : filters) {
      leaveOut(filter, budget(filter, wanted, all(), 0), out);
    }
    step(tree.root(), wanted.clone(), all(), 0, out);
  }

  private int[] all() {
    return problem.stocks().stream().mapToInt(Stock::available).toArray();
  }

  private boolean limited(int stock) {
    return problem.stocks().get(stock).limited();
  }

  private Held held(SearchTree.Prices given) throws Wrong {
    if (given.scale() <= 0 || given.premiums().size() != problem.stocks().size()) {
      throw new Wrong("a scale is not positive, or a stock has no premium");
    }
    long[] price = new long[length.length];
    for (int i = 0; i < price.length; i++) {
      price[i] = given.prices().getOrDefault(length[i], 0L);
      if (price[i] < 0) {
        throw new Wrong("length " + length[i] + " has a negative price");
      }
    }
    long[] premium = new long[problem.stocks().size()];
    for (int s = 0; s < premium.length; s++) {
      premium[s] = given.premiums().get(s);
      if (premium[s] < 0 || premium[s] > 0 && !limited(s)) {
        throw new Wrong("stock " + (s + 1) + " may not have premium " + premium[s]);
      }
    }
    return new Held(price, given.scale(), premium);
  }

  private void holdsForEveryBar(SearchTree.Prices given, Held held) throws Wrong {
    TreeMap<Long, Integer> counts = new TreeMap<>();
    for (int i = 0; i < length.length; i++) {
      counts.put(length[i], wanted[i]);
    }
    for (int s = 0; s < problem.stocks().size(); s++) {
      Stock stock = problem.stocks().get(s);
      if (stock.available() > 0) {
        long worth = CertificateCheck.mostWorth(problem, stock, counts, given.prices());
        if (worth > allowed(held, s)) {
          throw new Wrong("a bar of stock " + (s + 1) + " is worth " + worth + " at a filter");
        }
      }
    }
  }

  private long allowed(Held held, int stock) {
    return Math.addExact(
        Math.multiplyExact(held.scale(), problem.stocks().get(stock).cost()),
        held.premium()[stock]);
  }

  /** What all bars still to come can lose together. */
  private long budget(Held held, int[] left, int[] bars, long cost) {
    long sum = Math.multiplyExact(held.scale(), Math.subtractExact(target, cost));
    for (int i = 0; i < left.length; i++) {
      sum = Math.subtractExact(sum, Math.multiplyExact(held.price()[i], (long) left[i]));
    }
    for (int s = 0; s < bars.length; s++) {
      if (held.premium()[s] > 0) {
        sum = Math.addExact(sum, Math.multiplyExact(held.premium()[s], (long) bars[s]));
      }
    }
    return sum;
  }

  private long worth(Held held, int filling) {
    long sum = 0;
    int[] counts = pieces.get(filling);
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > 0) {
        sum = Math.addExact(sum, Math.multiplyExact(held.price()[i], (long) counts[i]));
      }
    }
    return sum;
  }

  private void leaveOut(Held held, long budget, boolean[] out) {
    for (int p = 0; p < out.length; p++) {
      out[p] |= Math.subtractExact(allowed(held, stocks.get(p)), worth(held, p)) > budget;
    }
  }

  /** All fillings of one bar that lose no more than all bars together can. */
  private void list(Held held) throws Wrong {
    long budget = budget(held, wanted, all(), 0);
    long[] width = new long[length.length];
    for (int i = 0; i < width.length; i++) {
      width[i] = Math.addExact(length[i], problem.kerf());
    }
    long largest = 0;
    for (Stock stock : problem.stocks()) {
      largest = Math.max(largest, Math.addExact(problem.usable(stock), problem.kerf()));
    }
    FillingList list = new FillingList(width, held.price(), wanted, largest, MOST_FILLINGS);
    boolean any = problem.piecesPerBar() == NestingProblem.ANY_NUMBER;
    for (int s = 0; s < problem.stocks().size(); s++) {
      Stock stock = problem.stocks().get(s);
      if (stock.available() == 0 || problem.usable(stock) < 0) {
        continue;
      }
      List<int[]> found =
          list.of(
              Math.addExact(problem.usable(stock), problem.kerf()),
              any ? Integer.MAX_VALUE : problem.piecesPerBar(),
              Math.subtractExact(allowed(held, s), budget));
      if (found == null || pieces.size() + found.size() > MOST_FILLINGS) {
        throw new Wrong("its filters leave more than " + MOST_FILLINGS + " fillings");
      }
      for (int[] filling : found) {
        pieces.add(filling);
        stocks.add(s);
      }
    }
  }

  private void step(SearchTree.Step step, int[] left, int[] bars, long cost, boolean[] out)
      throws Wrong {
    if (step instanceof SearchTree.Over) {
      if (cost <= target) {
        throw new Wrong("bars that cost " + cost + " are not over the target");
      }
      return;
    }
    Held held = held(prices(step));
    for (int p = 0; p < out.length; p++) {
      if (!out[p] && usable(p, left, bars) && worth(held, p) > allowed(held, stocks.get(p))) {
        throw new Wrong("a filling left beats the prices of a step");
      }
    }
    long budget = budget(held, left, bars, cost);
    if (step instanceof SearchTree.Closed) {
      if (budget >= 0) {
        throw new Wrong("a step is closed at prices that leave " + budget);
      }
      return;
    }
    boolean[] below = out.clone();
    leaveOut(held, budget, below);
    if (step instanceof SearchTree.Split split) {
      split(split, left, bars, cost, below);
      return;
    }
    boolean done = Arrays.stream(left).allMatch(count -> count == 0);
    for (int p = 0; p < below.length && !done; p++) {
      done |= !below[p] && usable(p, left, bars);
    }
    if (done) {
      throw new Wrong("a step has fillings left that it says it has not");
    }
  }

  private static SearchTree.Prices prices(SearchTree.Step step) throws Wrong {
    if (step instanceof SearchTree.Closed closed) {
      return closed.prices();
    }
    if (step instanceof SearchTree.Bare bare) {
      return bare.prices();
    }
    if (step instanceof SearchTree.Split split) {
      return split.prices();
    }
    throw new Wrong("a step of no known kind");
  }

  private void split(SearchTree.Split split, int[] left, int[] bars, long cost, boolean[] out)
      throws Wrong {
    int stock = split.filling().stock();
    if (stock < 0 || stock >= bars.length || split.filling().pieces().isEmpty()) {
      throw new Wrong("a filling of no stock, or of nothing");
    }
    int[] counts = new int[length.length];
    int known = 0;
    for (int i = 0; i < counts.length; i++) {
      counts[i] = split.filling().pieces().getOrDefault(length[i], 0);
      known += counts[i] > 0 ? 1 : 0;
    }
    if (known != split.filling().pieces().size()) {
      throw new Wrong("a filling with lengths that are not wanted");
    }
    int most = limited(stock) ? bars[stock] : Integer.MAX_VALUE;
    for (int i = 0; i < counts.length; i++) {
      most = counts[i] > 0 ? Math.min(most, left[i] / counts[i]) : most;
    }
    if (split.bars().size() != most + 1) {
      throw new Wrong("a step asks for 0 to " + (split.bars().size() - 1) + " bars of " + most);
    }
    for (int p = 0; p < out.length; p++) {
      out[p] |= stocks.get(p) == stock && Arrays.equals(pieces.get(p), counts);
    }
    for (int k = 0; k <= most; k++) {
      int[] after = left.clone();
      for (int i = 0; i < counts.length; i++) {
        after[i] -= k * counts[i];
      }
      int[] barsAfter = bars.clone();
      if (limited(stock)) {
        barsAfter[stock] -= k;
      }
      long more = Math.multiplyExact(problem.stocks().get(stock).cost(), (long) k);
      step(split.bars().get(k), after, barsAfter, Math.addExact(cost, more), out);
    }
  }

  private boolean usable(int filling, int[] left, int[] bars) {
    if (limited(stocks.get(filling)) && bars[stocks.get(filling)] == 0) {
      return false;
    }
    int[] counts = pieces.get(filling);
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > left[i]) {
        return false;
      }
    }
    return true;
  }
}
