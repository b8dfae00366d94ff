package mullwright.takeoff.nesting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import mullwright.takeoff.nesting.Certificate.Rule;
import mullwright.takeoff.nesting.NestingProblem.Part;
import mullwright.takeoff.nesting.NestingProblem.Stock;

/**
 * Verifies a {@link Certificate} against its problem, sharing nothing with the solver.
 *
 * <p>Uses integer arithmetic that fails rather than overflows. The worth of the best bar is found
 * by keeping, part by part, every pair of filled length and worth that no other pair beats: exact
 * for any length, quick when few pieces go on a bar.
 */
public final class CertificateCheck {
  private static final int MOST_TOTALS = 4_000_000;

  private CertificateCheck() {}

  /** What is wrong with {@code certificate} as a bound for {@code problem}; empty if it holds. */
  public static Optional<String> fault(NestingProblem problem, Certificate certificate) {
    try {
      return find(problem, certificate);
    } catch (ArithmeticException e) {
      return Optional.of("the sums leave the range of 64 bits");
    }
  }

  private static Optional<String> find(NestingProblem problem, Certificate certificate) {
    if (certificate.scale() <= 0) {
      return Optional.of("scale is not positive");
    }
    if (certificate.premiums().size() != problem.stocks().size()) {
      return Optional.of("there is not one premium for each stock");
    }
    TreeMap<Long, Integer> wanted = new TreeMap<>();
    for (Part part : problem.parts()) {
      if (part.count() == 0) {
        continue;
      }
      wanted.merge(part.length(), part.count(), Math::addExact);
    }
    long total = 0;
    for (Map.Entry<Long, Integer> entry : wanted.entrySet()) {
      long price = certificate.prices().getOrDefault(entry.getKey(), 0L);
      if (price < 0) {
        return Optional.of("length " + entry.getKey() + " has a negative price");
      }
      total = Math.addExact(total, Math.multiplyExact(price, (long) entry.getValue()));
    }
    for (int s = 0; s < problem.stocks().size(); s++) {
      Stock stock = problem.stocks().get(s);
      if (stock.available() == 0) {
        continue;
      }
      long premium = certificate.premiums().get(s);
      if (premium < 0 || (premium > 0 && !stock.limited())) {
        return Optional.of("stock " + (s + 1) + " may not have premium " + premium);
      }
      if (premium > 0) {
        total = Math.subtractExact(total, Math.multiplyExact(premium, (long) stock.available()));
      }
      long allowed = Math.addExact(Math.multiplyExact(certificate.scale(), stock.cost()), premium);
      long worth = mostWorth(problem, stock, wanted, certificate.prices());
      if (worth > allowed) {
        return Optional.of(
            "a bar of stock " + (s + 1) + " is worth " + worth + ", more than " + allowed);
      }
    }
    long least =
        total <= 0 ? 0 : Math.addExact(total, certificate.scale() - 1) / certificate.scale();
    long shortest = wanted.isEmpty() ? 0 : wanted.firstKey();
    long bound = nextTotal(problem, shortest, least);
    if (certificate.bound() <= bound) {
      return Optional.empty();
    }
    if (certificate.search().isPresent()) {
      SearchTree tree = certificate.search().get();
      Optional<String> fault = SearchTreeCheck.fault(problem, wanted, tree);
      long next = nextTotal(problem, shortest, Math.addExact(Math.max(-1, tree.target()), 1));
      return fault.isPresent() || certificate.bound() <= next
          ? fault
          : Optional.of("the search proves " + next + " and no more");
    }
    return certificate.rules().isEmpty()
        ? Optional.of("the prices prove " + bound + " and no more")
        : ruleFault(problem, wanted, certificate);
  }

  /** What is wrong with the rules: one that does not hold, or numbers of bars that break none. */
  private static Optional<String> ruleFault(
      NestingProblem problem, TreeMap<Long, Integer> wanted, Certificate certificate) {
    int stocks = problem.stocks().size();
    long[] needs = new long[certificate.rules().size()];
    for (int r = 0; r < needs.length; r++) {
      Rule rule = certificate.rules().get(r);
      if (rule.weights().size() != stocks) {
        return Optional.of("rule " + (r + 1) + " has not one weight for each stock");
      }
      for (Map.Entry<Long, Integer> entry : wanted.entrySet()) {
        long price = rule.prices().getOrDefault(entry.getKey(), 0L);
        if (price < 0) {
          return Optional.of("length " + entry.getKey() + " has a negative price");
        }
        needs[r] = Math.addExact(needs[r], Math.multiplyExact(price, (long) entry.getValue()));
      }
      for (int s = 0; s < stocks; s++) {
        long worth = mostWorth(problem, problem.stocks().get(s), wanted, rule.prices());
        boolean useful = problem.stocks().get(s).available() > 0 && worth > 0;
        if (rule.weights().get(s) < 0 || (useful && worth > rule.weights().get(s))) {
          return Optional.of(
              "by rule " + (r + 1) + " a bar of stock " + (s + 1) + " is worth " + worth);
        }
      }
    }
    return left(problem, certificate, 0, 0, needs, new long[stocks]);
  }

  /**
   * Numbers of bars below the bound that break no rule, those of stocks before {@code s} being
   * given: of the last stock and of stocks that cost nothing the most are taken, since more bars
   * break no more rules.
   */
  private static Optional<String> left(
      NestingProblem problem,
      Certificate certificate,
      int s,
      long cost,
      long[] needs,
      long[] bars) {
    if (s == bars.length) {
      for (long need : needs) {
        if (need > 0) {
          return Optional.empty();
        }
      }
      return Optional.of("these numbers of bars break no rule: " + Arrays.toString(bars));
    }
    Stock stock = problem.stocks().get(s);
    long most = stock.available();
    if (stock.cost() > 0) {
      most = Math.min(most, (certificate.bound() - 1 - cost) / stock.cost());
    }
    int at = s;
    if (certificate.rules().stream().allMatch(rule -> rule.weights().get(at) == 0)) {
      // bars that hold nothing keep no rule
      most = 0;
    }
    boolean all = stock.cost() == 0 || s + 1 == bars.length;
    for (long n = all ? most : 0; n <= most; n++) {
      long[] rest = needs.clone();
      for (int r = 0; r < rest.length; r++) {
        long weight = certificate.rules().get(r).weights().get(s);
        rest[r] = Math.subtractExact(rest[r], Math.multiplyExact(weight, n));
      }
      bars[s] = n;
      Optional<String> fault =
          left(problem, certificate, s + 1, cost + n * stock.cost(), rest, bars);
      if (fault.isPresent()) {
        return fault;
      }
    }
    return Optional.empty();
  }

  /** The greatest worth of pieces on one bar of {@code stock}. */
  static long mostWorth(
      NestingProblem problem, Stock stock, Map<Long, Integer> wanted, Map<Long, Long> prices) {
    long usable = problem.usable(stock);
    if (usable < 0) {
      return 0;
    }
    long capacity = Math.addExact(usable, problem.kerf());
    boolean counted = problem.piecesPerBar() != NestingProblem.ANY_NUMBER;
    int most = counted ? problem.piecesPerBar() : 0;
    // fillings.get(p): best fillings of at most p pieces; one list for all when not counted
    List<Fillings> fillings = new ArrayList<>();
    for (int p = 0; p <= most; p++) {
      fillings.add(Fillings.EMPTY);
    }
    for (Map.Entry<Long, Integer> entry : wanted.entrySet()) {
      long price = prices.getOrDefault(entry.getKey(), 0L);
      long width = Math.addExact(entry.getKey(), problem.kerf());
      long left = Math.min(entry.getValue(), capacity / width);
      if (counted) {
        left = Math.min(left, most);
      }
      for (long chunk = 1; left > 0 && price > 0; chunk *= 2) {
        long pieces = Math.min(chunk, left);
        left -= pieces;
        long worth = Math.multiplyExact(pieces, price);
        if (!counted) {
          fillings.set(0, fillings.get(0).with(fillings.get(0), pieces * width, worth, capacity));
        }
        for (int p = most; counted && p >= pieces; p--) {
          Fillings fewer = fillings.get(p - (int) pieces);
          fillings.set(p, fillings.get(p).with(fewer, pieces * width, worth, capacity));
        }
      }
    }
    return fillings.get(most).best();
  }

  /** Least total of the costs of bars that can hold a part, not below {@code least}. */
  private static long nextTotal(NestingProblem problem, long shortest, long least) {
    List<Stock> useful = new ArrayList<>(problem.stocks());
    useful.removeIf(stock -> stock.available() == 0 || problem.usable(stock) < shortest);
    long largest = 0;
    long step = 0;
    for (Stock stock : useful) {
      largest = Math.max(largest, stock.cost());
      step = gcd(stock.cost(), step);
    }
    if (largest == 0 || least == 0) {
      return least;
    }
    long first = Math.multiplyExact(Math.addExact(least, step - 1) / step, step);
    if ((first + largest) / step > MOST_TOTALS) {
      return first;
    }
    int size = (int) ((first + largest) / step) + 1;
    boolean[] possible = new boolean[size];
    possible[0] = true;
    for (Stock stock : useful) {
      int cost = (int) (stock.cost() / step);
      int[] used = new int[size];
      for (int t = cost; cost > 0 && t < size; t++) {
        if (!possible[t] && possible[t - cost] && used[t - cost] < stock.available()) {
          possible[t] = true;
          used[t] = used[t - cost] + 1;
        }
      }
    }
    for (int t = (int) (first / step); t < size; t++) {
      if (possible[t]) {
        return t * step;
      }
    }
    return first;
  }

  private static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  /** Filled lengths in rising order, each with its worth, which rises too. */
  private record Fillings(long[] length, long[] worth) {
    static final Fillings EMPTY = new Fillings(new long[] {0}, new long[] {0});

    long best() {
      return worth[worth.length - 1];
    }

    /** These fillings and those of {@code fewer} with one more chunk, the beaten ones left out. */
    Fillings with(Fillings fewer, long chunkLength, long chunkWorth, long capacity) {
      int n = length.length;
      int m = fewer.length.length;
      long[] lengths = new long[n + m];
      long[] worths = new long[n + m];
      int size = 0;
      int i = 0;
      int j = 0;
      long best = -1;
      while (i < n || j < m) {
        long a = i < n ? length[i] : Long.MAX_VALUE;
        long b = j < m ? Math.addExact(fewer.length[j], chunkLength) : Long.MAX_VALUE;
        if (b > capacity) {
          b = Long.MAX_VALUE;
          j = m;
          if (a == Long.MAX_VALUE) {
            break;
          }
        }
        boolean mine = a <= b;
        long w = mine ? worth[i] : Math.addExact(fewer.worth[j], chunkWorth);
        long l = mine ? a : b;
        if (mine) {
          i++;
        } else {
          j++;
        }
        if (w > best) {
          if (size > 0 && lengths[size - 1] == l) {
            size--;
          }
          lengths[size] = l;
          worths[size] = w;
          size++;
          best = w;
        }
      }
      return new Fillings(Arrays.copyOf(lengths, size), Arrays.copyOf(worths, size));
    }
  }
}
