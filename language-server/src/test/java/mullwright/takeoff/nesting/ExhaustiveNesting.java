package mullwright.takeoff.nesting;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import mullwright.takeoff.nesting.NestingProblem.Part;
import mullwright.takeoff.nesting.NestingProblem.Stock;

/**
 * The least cost of a small problem by trying everything: one bar for the longest piece left, every
 * choice of companions, every stock.
 */
final class ExhaustiveNesting {
  /** What {@link #cost} answers when the bars to be had cannot hold all parts. */
  static final long IMPOSSIBLE = Long.MAX_VALUE / 4;

  private final NestingProblem problem;
  private final Map<List<Integer>, Long> known = new HashMap<>();

  private ExhaustiveNesting(NestingProblem problem) {
    this.problem = problem;
  }

  static long cost(NestingProblem problem) {
    int[] state = new int[problem.parts().size() + problem.stocks().size()];
    for (int i = 0; i < problem.parts().size(); i++) {
      state[i] = problem.parts().get(i).count();
    }
    for (int s = 0; s < problem.stocks().size(); s++) {
      state[problem.parts().size() + s] = Math.min(problem.stocks().get(s).available(), 99);
    }
    return new ExhaustiveNesting(problem).least(state);
  }

  private long least(int[] state) {
    int first = -1;
    for (int i = 0; i < problem.parts().size(); i++) {
      if (state[i] > 0
          && (first < 0 || problem.parts().get(i).length() > problem.parts().get(first).length())) {
        first = i;
      }
    }
    if (first < 0) {
      return 0;
    }
    List<Integer> key = new ArrayList<>();
    for (int v : state) {
      key.add(v);
    }
    Long before = known.get(key);
    if (before != null) {
      return before;
    }
    long best = IMPOSSIBLE;
    for (int s = 0; s < problem.stocks().size(); s++) {
      int at = problem.parts().size() + s;
      if (state[at] == 0) {
        continue;
      }
      state[at]--;
      state[first]--;
      best =
          Math.min(
              best,
              problem.stocks().get(s).cost()
                  + fill(state, s, 0, problem.parts().get(first).length(), 1));
      state[first]++;
      state[at]++;
    }
    best = Math.min(best, IMPOSSIBLE);
    known.put(key, best);
    return best;
  }

  /** Tries every way to go on filling a bar of stock {@code s} with parts from {@code i} on. */
  private long fill(int[] state, int s, int i, long sum, int pieces) {
    Stock stock = problem.stocks().get(s);
    if (sum + (pieces - 1) * problem.kerf() > stock.length() - 2 * problem.trim()
        || (problem.piecesPerBar() > 0 && pieces > problem.piecesPerBar())) {
      return IMPOSSIBLE;
    }
    if (i == problem.parts().size()) {
      return least(state);
    }
    long best = fill(state, s, i + 1, sum, pieces);
    if (state[i] > 0) {
      Part part = problem.parts().get(i);
      state[i]--;
      best = Math.min(best, fill(state, s, i, sum + part.length(), pieces + 1));
      state[i]++;
    }
    return best;
  }
}
