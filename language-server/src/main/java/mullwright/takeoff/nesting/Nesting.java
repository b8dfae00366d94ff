package mullwright.takeoff.nesting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import mullwright.takeoff.nesting.NestingProblem.Part;
import mullwright.takeoff.nesting.NestingProblem.Stock;
import mullwright.takeoff.nesting.NestingResult.Bar;
import mullwright.takeoff.nesting.NestingResult.Cut;
import mullwright.takeoff.nesting.NestingResult.Planned;
import mullwright.takeoff.nesting.NestingResult.Refused;

/**
 * Nests parts on stock lengths at least cost: the entry of this package.
 *
 * <p>The same problem under the same work limit gives the same plan on any machine.
 */
public final class Nesting {
  /** Most pieces of one problem. */
  public static final int MOST_CUTS = 200_000;

  /** Most different part lengths of one problem. */
  public static final int MOST_LENGTHS = 1_000;

  /** Greatest length of a stock or a part, and greatest cost of a bar. */
  public static final long MOST_LENGTH = 1_000_000_000_000L;

  /** Greatest cost of a bar. */
  public static final long MOST_COST = 100_000_000L;

  private Nesting() {}

  /** The best plan found for {@code problem} within {@code limits}, or why there is none. */
  public static NestingResult solve(NestingProblem problem, Limits limits) {
    Optional<Refusal> refusal = refusal(problem);
    if (refusal.isPresent()) {
      return new Refused(refusal.get());
    }
    CutModel model = new CutModel(problem);
    NestingSearch search = new NestingSearch(problem, model, new Effort(limits));
    search.run();
    if (search.best() == null) {
      return new Refused(new Refusal.StockRunsOut(search.impossible()));
    }
    return new Planned(
        bars(problem, model, search.best()),
        search.best().cost(),
        search.lowerBound(),
        search.proof(),
        search.certificate(),
        search.statement(),
        search.work(),
        search.clock());
  }

  private static Optional<Refusal> refusal(NestingProblem problem) {
    long cuts = 0;
    long lengths =
        problem.parts().stream().filter(p -> p.count() > 0).map(Part::length).distinct().count();
    int longest = -1;
    for (int i = 0; i < problem.parts().size(); i++) {
      Part part = problem.parts().get(i);
      cuts += part.count();
      if (part.count() > 0
          && (longest < 0 || part.length() > problem.parts().get(longest).length())) {
        longest = i;
      }
    }
    if (cuts > MOST_CUTS) {
      return Optional.of(new Refusal.TooMany("cuts", cuts, MOST_CUTS));
    }
    if (lengths > MOST_LENGTHS) {
      return Optional.of(new Refusal.TooMany("different lengths", lengths, MOST_LENGTHS));
    }
    if (longest < 0) {
      return Optional.empty();
    }
    if (problem.stocks().isEmpty()) {
      return Optional.of(new Refusal.NoStock());
    }
    int reach = 0;
    for (int s = 0; s < problem.stocks().size(); s++) {
      Stock stock = problem.stocks().get(s);
      if (!stock.limited() && stock.cost() == 0) {
        return Optional.of(new Refusal.FreeStock(s));
      }
      if (stock.cost() > MOST_COST) {
        return Optional.of(new Refusal.TooMany("units of cost", stock.cost(), MOST_COST));
      }
      if (stock.length() > MOST_LENGTH) {
        return Optional.of(new Refusal.TooMany("units of length", stock.length(), MOST_LENGTH));
      }
      if (stock.length() > problem.stocks().get(reach).length()) {
        reach = s;
      }
    }
    Stock longestStock = problem.stocks().get(reach);
    long length = problem.parts().get(longest).length();
    if (length > problem.usable(longestStock)) {
      return Optional.of(
          new Refusal.PartLongerThanStock(
              longest, length, reach, longestStock.length(), problem.usable(longestStock)));
    }
    return Optional.empty();
  }

  /** Turns patterns over merged lengths into bars that name the caller's parts. */
  private static List<Bar> bars(NestingProblem problem, CutModel model, Draft draft) {
    List<Pattern> patterns = new ArrayList<>();
    for (int p = 0; p < draft.patterns().size(); p++) {
      for (int n = 0; n < draft.times(p); n++) {
        patterns.add(draft.patterns().get(p));
      }
    }
    patterns.sort(Comparator.comparingInt(Pattern::stock).thenComparing(Nesting::compareCuts));
    Map<Long, Queue<int[]>> byLength = new HashMap<>();
    for (int i = 0; i < problem.parts().size(); i++) {
      Part part = problem.parts().get(i);
      byLength
          .computeIfAbsent(part.length(), k -> new ArrayDeque<>())
          .add(new int[] {i, part.count()});
    }
    List<Bar> bars = new ArrayList<>();
    for (Pattern pattern : patterns) {
      List<Cut> cuts = new ArrayList<>();
      long position = problem.trim();
      for (int k = 0; k < pattern.part().length; k++) {
        long length = model.length[pattern.part()[k]];
        Queue<int[]> open = byLength.get(length);
        for (int n = 0; n < pattern.count()[k]; n++) {
          while (open.peek()[1] == 0) {
            open.remove();
          }
          cuts.add(new Cut(open.peek()[0], position));
          open.peek()[1]--;
          position += length + problem.kerf();
        }
      }
      int stock = model.stock[pattern.stock()];
      long end = problem.stocks().get(stock).length() - problem.trim();
      // the last piece may end on the trimmed end, or so near it that its saw cut runs past
      long lastKerf = Math.min(problem.kerf(), end - (position - problem.kerf()));
      bars.add(
          new Bar(
              stock,
              cuts,
              (cuts.size() - 1) * problem.kerf() + lastKerf,
              end - (position - problem.kerf()) - lastKerf));
    }
    return bars;
  }

  private static int compareCuts(Pattern a, Pattern b) {
    int n = Math.min(a.part().length, b.part().length);
    for (int k = 0; k < n; k++) {
      if (a.part()[k] != b.part()[k]) {
        return Integer.compare(a.part()[k], b.part()[k]);
      }
      if (a.count()[k] != b.count()[k]) {
        return Integer.compare(b.count()[k], a.count()[k]);
      }
    }
    return Integer.compare(b.part().length, a.part().length);
  }
}
