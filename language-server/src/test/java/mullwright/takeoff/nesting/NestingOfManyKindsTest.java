package mullwright.takeoff.nesting;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import mullwright.takeoff.nesting.NestingProblem.Part;
import mullwright.takeoff.nesting.NestingProblem.Stock;
import mullwright.takeoff.nesting.NestingResult.Planned;
import mullwright.takeoff.nesting.NestingResult.Refused;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Random orders of many kinds, each in a small size whose optimum is found by trying everything and
 * in the size of a real order: plans are valid, no bound exceeds a plan, every claim is checked by
 * a reckoning of this test's own.
 *
 * <p>{@code -Dnesting.orders=N} tries N orders of each kind and size instead of a few.
 */
class NestingOfManyKindsTest {
  private static final int ORDERS = Integer.getInteger("nesting.orders", 25);
  private static final long WORK = 200_000_000;

  /** Largest product of stock length and part lengths whose worth is reckoned cell by cell. */
  private static final long CELLS = 40_000_000;

  private static final int BAR = 1_000;

  /** Which orders. */
  enum Kind {
    FEW_LENGTHS,
    MANY_LENGTHS,
    LARGE_PIECES,
    SMALL_PIECES,
    NEAR_HALF,
    NEAR_THIRDS,
    AS_LONG_AS_THE_BAR,
    EQUAL_BUT_FOR_THE_SAW,
    REMNANTS_SHORTER_THAN_ANY_PIECE,
    REMNANTS,
    SEVERAL_STOCKS_AT_ODD_COSTS,
    PIECES_PER_BAR,
    FEW_BARS_TO_BE_HAD,
    NOTHING_OF_SOME_WANTED,
    NO_WASTE,
    ALL_AT_ONCE
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void smallOrdersAreSolvedToTheirOptimum(Kind kind) {
    Random random = new Random(31 + kind.ordinal());
    for (int n = 0; n < 4 * ORDERS; n++) {
      NestingProblem problem = problem(kind, random, true);
      long optimum = ExhaustiveNesting.cost(problem);
      NestingResult result = Nesting.solve(problem, Limits.work(WORK));
      if (optimum == ExhaustiveNesting.IMPOSSIBLE) {
        assertThat(result).as("%s", problem).isInstanceOf(Refused.class);
        assertThat(((Refused) result).reason().message()).contains(" ");
        continue;
      }
      Planned plan = (Planned) result;
      holds(problem, plan);
      assertThat(plan.lowerBound()).as("%s", problem).isLessThanOrEqualTo(optimum);
      assertThat(plan.cost()).as("%s", problem).isEqualTo(optimum);
      assertThat(plan.proved()).as("%s", problem).isTrue();
    }
  }

  @ParameterizedTest
  @EnumSource(Kind.class)
  void realOrdersHaveValidPlansAndBoundsThatHold(Kind kind) {
    Random random = new Random(97 + kind.ordinal());
    int proved = 0;
    int planned = 0;
    for (int n = 0; n < ORDERS; n++) {
      NestingProblem problem = problem(kind, random, false);
      NestingResult result = Nesting.solve(problem, Limits.work(WORK));
      if (result instanceof Planned plan) {
        holds(problem, plan);
        planned++;
        proved += plan.proved() ? 1 : 0;
        assertThat(plan.cost()).as("%s", problem).isLessThanOrEqualTo(oneByOne(problem));
      } else {
        // only what is to be had may run out
        assertThat(problem.stocks()).as("%s", problem).allMatch(Stock::limited);
      }
    }
    boolean hard =
        kind == Kind.SEVERAL_STOCKS_AT_ODD_COSTS
            || kind == Kind.FEW_BARS_TO_BE_HAD
            || kind == Kind.ALL_AT_ONCE;
    if (!hard) {
      assertThat(proved).isGreaterThanOrEqualTo(planned * 95 / 100);
    }
  }

  private static void holds(NestingProblem problem, Planned plan) {
    assertThat(PlanCheck.faults(problem, plan)).as("%s", problem).isEmpty();
    assertThat(CertificateCheck.fault(problem, plan.certificate())).as("%s", problem).isEmpty();
    assertThat(plan.certificate().bound()).as("%s", problem).isEqualTo(plan.lowerBound());
    if (plan.certificate().rules().isEmpty() && plan.certificate().search().isEmpty()) {
      assertThat(pricesShow(problem, plan.certificate())).as("%s", problem).isTrue();
    }
  }

  /**
   * True if the prices show the bound by weak duality: no bar of a stock is worth more than it
   * costs, so all pieces together cost no less than they are worth. The most a bar can be worth is
   * found length by length, any number of each piece, and pieces by pieces where they are limited.
   */
  private static boolean pricesShow(NestingProblem problem, Certificate certificate) {
    Map<Long, Long> wanted = new TreeMap<>();
    problem.parts().stream()
        .filter(part -> part.count() > 0)
        .forEach(part -> wanted.merge(part.length(), (long) part.count(), Long::sum));
    long worth = 0;
    for (Map.Entry<Long, Long> each : wanted.entrySet()) {
      worth += each.getValue() * certificate.prices().getOrDefault(each.getKey(), 0L);
    }
    for (int s = 0; s < problem.stocks().size(); s++) {
      Stock stock = problem.stocks().get(s);
      if (stock.available() == 0) {
        continue;
      }
      long premium = certificate.premiums().get(s);
      if (premium < 0 || premium > 0 && !stock.limited()) {
        return false;
      }
      worth -= premium == 0 ? 0 : premium * stock.available();
      long room = problem.usable(stock) + problem.kerf();
      if (mostWorth(problem, wanted, certificate.prices(), room)
          > certificate.scale() * stock.cost() + premium) {
        return false;
      }
    }
    long least = worth <= 0 ? 0 : (worth + certificate.scale() - 1) / certificate.scale();
    // a total is a sum of costs of bars: the next such sum
    return certificate.bound() <= nextSum(problem, least);
  }

  private static long mostWorth(
      NestingProblem problem, Map<Long, Long> wanted, Map<Long, Long> prices, long room) {
    if (room <= 0) {
      return 0;
    }
    int most = problem.piecesPerBar() > 0 ? problem.piecesPerBar() : 0;
    assertThat(room * wanted.size() * Math.max(1, most)).isLessThan(CELLS);
    long[][] best = new long[most + 1][(int) room + 1];
    for (Map.Entry<Long, Long> each : wanted.entrySet()) {
      int takes = (int) Math.min(Integer.MAX_VALUE / 2, each.getKey() + problem.kerf());
      long price = prices.getOrDefault(each.getKey(), 0L);
      // one round for each piece that may be taken, no more than are wanted
      long rounds = Math.min(each.getValue(), room / takes);
      for (long round = 0; round < rounds; round++) {
        boolean better = false;
        for (int pieces = most; pieces >= (most == 0 ? 0 : 1); pieces--) {
          long[] before = best[most == 0 ? 0 : pieces - 1];
          for (int full = (int) room; full >= takes; full--) {
            if (before[full - takes] + price > best[pieces][full]) {
              best[pieces][full] = before[full - takes] + price;
              better = true;
            }
          }
        }
        if (!better) {
          break;
        }
      }
    }
    long found = 0;
    for (long[] row : best) {
      for (long each : row) {
        found = Math.max(found, each);
      }
    }
    return found;
  }

  /** The least sum of costs of bars that is not less, of bars that hold any piece at all. */
  private static long nextSum(NestingProblem problem, long least) {
    assertThat(least).isLessThan(10_000_000);
    long shortest =
        problem.parts().stream()
            .filter(part -> part.count() > 0)
            .mapToLong(Part::length)
            .min()
            .orElse(0);
    int size =
        (int) least + 1 + problem.stocks().stream().mapToInt(s -> (int) s.cost()).max().orElse(0);
    boolean[] can = new boolean[size + 1];
    can[0] = true;
    for (Stock stock : problem.stocks()) {
      int cost = (int) stock.cost();
      if (cost == 0 || problem.usable(stock) < shortest) {
        continue;
      }
      // how many bars of this stock each sum takes at least
      int[] bars = new int[size + 1];
      for (int sum = 0; sum <= size; sum++) {
        if (!can[sum] && sum >= cost && can[sum - cost] && bars[sum - cost] < stock.available()) {
          can[sum] = true;
          bars[sum] = bars[sum - cost] + 1;
        }
      }
    }
    for (int sum = (int) least; sum <= size; sum++) {
      if (can[sum]) {
        return sum;
      }
    }
    return Long.MAX_VALUE;
  }

  /** The cost of a bar for each piece, of the cheapest stock that holds it without limit. */
  private static long oneByOne(NestingProblem problem) {
    long cost = 0;
    for (Part part : problem.parts()) {
      long cheapest =
          problem.stocks().stream()
              .filter(stock -> !stock.limited() && problem.usable(stock) >= part.length())
              .mapToLong(Stock::cost)
              .min()
              .orElse(Long.MAX_VALUE / 1_000_000);
      cost += cheapest * part.count();
    }
    return cost;
  }

  static NestingProblem problem(Kind kind, Random random, boolean small) {
    int types = small ? 1 + random.nextInt(4) : 5 + random.nextInt(36);
    int most = small ? 3 : 20;
    long bar = small ? 40 + random.nextInt(80) : BAR;
    long kerf = random.nextInt(4);
    long trim = random.nextInt(4);
    List<Stock> stocks = new ArrayList<>();
    stocks.add(Stock.unlimited(bar, 1));
    int low = (int) bar / 20;
    int high = (int) bar * 2 / 3;
    int pieces = NestingProblem.ANY_NUMBER;
    switch (kind) {
      case FEW_LENGTHS -> types = 1 + random.nextInt(3);
      case MANY_LENGTHS -> {
        types = small ? 5 : 90;
        most = 2;
      }
      case LARGE_PIECES -> {
        low = (int) bar / 3;
        high = (int) bar - 8;
      }
      case SMALL_PIECES -> {
        low = small ? (int) bar / 8 : (int) bar / 60;
        high = (int) bar / 6;
      }
      case NEAR_HALF -> {
        low = (int) bar / 2 - 5;
        high = (int) bar / 2 + 5;
      }
      case NEAR_THIRDS -> {
        low = (int) bar / 3 - 4;
        high = (int) bar / 3 + 4;
      }
      case REMNANTS_SHORTER_THAN_ANY_PIECE -> {
        low = (int) bar / 4;
        stocks.add(new Stock(bar / 5, 0, 3));
        stocks.add(new Stock(1, 0, 2));
      }
      case REMNANTS -> remnants(random, bar, stocks);
      case SEVERAL_STOCKS_AT_ODD_COSTS -> several(random, bar, stocks);
      case PIECES_PER_BAR -> pieces = 1 + random.nextInt(5);
      case FEW_BARS_TO_BE_HAD -> {
        stocks.clear();
        stocks.add(new Stock(bar, 7, small ? random.nextInt(4) : random.nextInt(200)));
        stocks.add(new Stock(bar * 3 / 4, 5, small ? random.nextInt(4) : random.nextInt(200)));
      }
      case ALL_AT_ONCE -> {
        several(random, bar, stocks);
        remnants(random, bar, stocks);
        pieces = 2 + random.nextInt(6);
      }
      default -> {
        // as it stands
      }
    }
    List<Part> parts = new ArrayList<>();
    int left = small ? 9 : Integer.MAX_VALUE;
    for (int i = 0; i < types && left > 0; i++) {
      int count = Math.min(left, 1 + random.nextInt(most));
      long length = Math.max(1, low + random.nextInt(high - low + 1));
      switch (kind) {
        case AS_LONG_AS_THE_BAR -> length = random.nextBoolean() ? bar - 2 * trim : length;
        case EQUAL_BUT_FOR_THE_SAW ->
            // so many pieces fill the bar without the saw, and one less with it
            length =
                Math.max(1, (bar - 2 * trim) / (1 + random.nextInt(6)) - random.nextInt(2) * kerf);
        case NOTHING_OF_SOME_WANTED -> count = random.nextInt(3) == 0 ? 0 : count;
        default -> {
          // as it stands
        }
      }
      left -= count;
      parts.add(new Part(Math.min(length, bar - 2 * trim), count));
    }
    if (kind == Kind.NO_WASTE) {
      parts = full(random, bar - 2 * trim, kerf, small ? 2 : 25);
    }
    return new NestingProblem(stocks, parts, kerf, trim, pieces);
  }

  private static void several(Random random, long bar, List<Stock> stocks) {
    stocks.set(0, Stock.unlimited(bar, 90 + random.nextInt(30)));
    for (int i = 0; i < 2; i++) {
      stocks.add(Stock.unlimited(bar * (3 + random.nextInt(4)) / 8, 30 + random.nextInt(70)));
    }
  }

  private static void remnants(Random random, long bar, List<Stock> stocks) {
    for (int i = 0; i < 3; i++) {
      stocks.add(
          new Stock(1 + random.nextInt((int) bar), random.nextInt(2), 1 + random.nextInt(3)));
    }
  }

  /** Bars cut up at random without a rest, and the pieces mixed. */
  private static List<Part> full(Random random, long room, long kerf, int bars) {
    Map<Long, Integer> pieces = new TreeMap<>();
    for (int bar = 0; bar < bars; bar++) {
      long rest = room;
      while (rest > room / 3) {
        long piece = room / 5 + random.nextInt((int) (room / 6));
        pieces.merge(piece, 1, Integer::sum);
        rest -= piece + kerf;
      }
      if (rest > 0) {
        pieces.merge(rest, 1, Integer::sum);
      }
    }
    List<Part> parts = new ArrayList<>();
    pieces.forEach((length, count) -> parts.add(new Part(length, count)));
    return parts;
  }
}
