package mullwright.takeoff.nesting;

import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;

/**
 * Searches all plans made of a given list of patterns, each piece cut exactly once.
 *
 * <p>Branches on how many bars a pattern gets. At each node the prices of the linear programme over
 * the listed patterns are made integers, checked against every pattern that may still be used, and
 * the bound they give in whole numbers decides whether the node is closed; patterns that lose more
 * than the node can afford are barred below it. Floating numbers choose where to look and never
 * what to leave out.
 *
 * <p>A search that finds nothing is {@linkplain #root written down}; one too long to be written
 * down is given up, since nobody could check it.
 */
final class PartitionSearch {
  private static final double SCALE = 1 << 30;
  private static final double STAND_IN = 1.5;

  /** Most prices in a search that is written down. */
  private static final long MOST_PRICES = 2_000_000;

  /** How a search ended. */
  enum Verdict {
    /** A plan within the target was found. */
    FOUND,
    /** There is none: every branch was closed. */
    NONE,
    /** The effort was spent or numbers gave out before all branches were closed. */
    OPEN
  }

  private final CutModel model;
  private final Effort effort;
  private final PatternLp lp;
  private final int first;
  private final int count;
  private final long target;
  private final long nodeLimit;
  private final boolean[] out;
  private final int[] trail;
  private int trailSize;
  private final long[] price;
  private final long[] most;
  private Draft found;
  private boolean open;
  private long nodes;
  private final NestingProblem problem;

  /** The step just closed. */
  private SearchTree.Step step;

  PartitionSearch(
      NestingProblem problem,
      CutModel model,
      List<Pattern> patterns,
      long target,
      long nodeLimit,
      Effort effort) {
    this.problem = problem;
    this.model = model;
    this.effort = effort;
    this.target = target;
    this.nodeLimit = nodeLimit;
    this.lp = new PatternLp(model, STAND_IN, effort);
    this.first = lp.columns();
    for (Pattern pattern : patterns) {
      lp.add(pattern);
    }
    this.count = patterns.size();
    this.out = new boolean[count];
    this.trail = new int[count + 1];
    this.price = new long[model.size()];
    this.most = new long[model.stocks()];
  }

  /** Searches below a root where nothing is fixed. */
  Verdict run() {
    descend(new Draft(model), 0);
    return found != null ? Verdict.FOUND : open ? Verdict.OPEN : Verdict.NONE;
  }

  /** The plan found, null if none. */
  Draft found() {
    return found;
  }

  long nodes() {
    return nodes;
  }

  /** The search from its first step on, if it found nothing. */
  SearchTree.Step root() {
    return step;
  }

  private boolean usable(int j, Draft draft) {
    if (out[j]) {
      return false;
    }
    Pattern pattern = lp.pattern(first + j);
    return draft.left[pattern.stock()] > 0 && pattern.within(draft.wanted);
  }

  /** True if the search can stop: a plan was found or the effort is spent. */
  private boolean descend(Draft draft, int depth) {
    nodes++;
    if (draft.cost() > target) {
      step = new SearchTree.Over();
      return false;
    }
    if (draft.pieces() == 0) {
      found = draft;
      return true;
    }
    if (effort.spent() || nodes > nodeLimit || nodes * model.size() > MOST_PRICES) {
      open = true;
      return true;
    }
    int mark = trailSize;
    boolean stop = branch(draft, depth);
    while (trailSize > mark) {
      out[trail[--trailSize]] = false;
    }
    return stop;
  }

  private void drop(int j) {
    out[j] = true;
    trail[trailSize++] = j;
  }

  private boolean branch(Draft draft, int depth) {
    lp.setRight(draft.wanted, draft.left);
    for (int j = 0; j < count; j++) {
      lp.bar(first + j, !usable(j, draft));
    }
    if (!lp.solve()) {
      open = true;
      return true;
    }
    Bound bound = bound(draft);
    if (draft.cost() + bound.cost() > target) {
      step = new SearchTree.Closed(bound.prices(model, problem));
      return false;
    }
    long loss =
        Math.subtractExact(Math.multiplyExact(bound.scale(), target - draft.cost()), bound.worth());
    for (int j = 0; j < count; j++) {
      if (!lp.barred(first + j) && bound.loss(model, lp.pattern(first + j)) > loss) {
        drop(j);
      }
    }
    effort.add(6L * count);
    int chosen = choose();
    if (chosen < 0) {
      // an integral solution that cuts no piece too many is a plan; otherwise take any pattern
      Draft whole = integral(draft);
      if (whole != null) {
        found = whole;
        return true;
      }
      chosen = any(draft);
      if (chosen < 0) {
        step = new SearchTree.Bare(bound.prices(model, problem));
        return false;
      }
    }
    return counts(draft, chosen, depth, bound);
  }

  /** Tries every number of bars of pattern {@code j}, from the programme's value outward. */
  private boolean counts(Draft draft, int j, int depth, Bound bound) {
    Pattern pattern = lp.pattern(first + j);
    double x = valueOf(first + j);
    int times = pattern.times(draft.wanted);
    if (model.limited(pattern.stock())) {
      times = Math.min(times, draft.left[pattern.stock()]);
    }
    SearchTree.Step[] below = new SearchTree.Step[times + 1];
    drop(j);
    int up = Math.min(times, (int) Math.ceil(x - 1e-9));
    if (up == 0) {
      up = 1;
    }
    int down = up - 1;
    while (up <= times || down >= 0) {
      boolean rise = down < 0 || (up <= times && up - x <= x - down + 0.3);
      int k = rise ? up++ : down--;
      Draft child = draft.copy();
      if (k > 0) {
        child.cut(pattern, k);
      }
      if (descend(child, depth + 1)) {
        return true;
      }
      below[k] = step;
    }
    step = new SearchTree.Split(bound.prices(model, problem), filling(pattern), List.of(below));
    return false;
  }

  /** A pattern in the caller's terms. */
  private SearchTree.Filling filling(Pattern pattern) {
    TreeMap<Long, Integer> pieces = new TreeMap<>();
    for (int k = 0; k < pattern.part().length; k++) {
      pieces.put(model.length[pattern.part()[k]], pattern.count()[k]);
    }
    return new SearchTree.Filling(model.stock[pattern.stock()], pieces);
  }

  private double valueOf(int column) {
    for (int i = 0; i < lp.rows(); i++) {
      if (lp.basic(i) == column) {
        return lp.value(i);
      }
    }
    return 0;
  }

  /** The listed pattern whose value has the largest fraction; -1 if none has one. */
  private int choose() {
    int best = -1;
    double most = 0;
    for (int i = 0; i < lp.rows(); i++) {
      int j = lp.basic(i) - first;
      if (j < 0 || out[j] || lp.barred(first + j)) {
        continue;
      }
      double x = lp.value(i);
      double fraction = x - Math.floor(x + 1e-4);
      if (fraction > 1e-4) {
        double score = fraction + 1e-3 * Math.min(900, x);
        if (score > most || (score == most && j < best)) {
          most = score;
          best = j;
        }
      }
    }
    return best;
  }

  private int any(Draft draft) {
    for (int j = 0; j < count; j++) {
      if (usable(j, draft)) {
        return j;
      }
    }
    return -1;
  }

  private Draft integral(Draft draft) {
    Draft whole = draft.copy();
    for (int i = 0; i < lp.rows(); i++) {
      int j = lp.basic(i);
      int n = (int) Math.rint(lp.value(i));
      if (j >= first && n > 0 && !lp.barred(j)) {
        Pattern pattern = lp.pattern(j);
        whole.cut(pattern, Math.min(n, pattern.times(whole.wanted)));
      }
    }
    return whole.complete() && whole.cost() <= target ? whole : null;
  }

  /** A bound in whole numbers on what remains, from the programme's prices. */
  private Bound bound(Draft draft) {
    double dearest = Math.max(1, model.largestCost);
    long scale = (long) Math.max(1, SCALE / dearest);
    for (int i = 0; i < price.length; i++) {
      price[i] = draft.wanted[i] == 0 ? 0 : (long) (Math.max(0, lp.price(i)) * dearest * scale);
    }
    Arrays.fill(most, 0);
    for (int j = 0; j < count; j++) {
      if (!lp.barred(first + j)) {
        Pattern pattern = lp.pattern(first + j);
        most[pattern.stock()] = Math.max(most[pattern.stock()], worth(pattern));
      }
    }
    return Bound.of(model, draft.wanted, draft.left, price, scale, most);
  }

  private long worth(Pattern pattern) {
    long sum = 0;
    for (int k = 0; k < pattern.part().length; k++) {
      sum += price[pattern.part()[k]] * pattern.count()[k];
    }
    return sum;
  }
}
