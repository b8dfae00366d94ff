package mullwright.takeoff.nesting;

import java.util.ArrayList;
import java.util.List;

/**
 * A plan in the making: bars chosen so far, what is still wanted, what is left of limited stocks.
 */
final class Draft {
  final CutModel model;
  final int[] wanted;
  final int[] left;
  private final List<Pattern> patterns = new ArrayList<>();
  private final List<Integer> times = new ArrayList<>();
  private long cost;
  private long pieces;

  Draft(CutModel model) {
    this.model = model;
    this.wanted = model.demand.clone();
    this.left = model.available.clone();
    this.pieces = model.total();
  }

  private Draft(Draft other) {
    this.model = other.model;
    this.wanted = other.wanted.clone();
    this.left = other.left.clone();
    this.patterns.addAll(other.patterns);
    this.times.addAll(other.times);
    this.cost = other.cost;
    this.pieces = other.pieces;
  }

  Draft copy() {
    return new Draft(this);
  }

  /** Cuts {@code pattern} on {@code n} bars; pieces no longer wanted are left off. */
  void cut(Pattern pattern, int n) {
    int proper = Math.min(n, pattern.times(wanted));
    if (proper > 0) {
      take(pattern, proper);
    }
    for (int rest = n - proper; rest > 0; rest--) {
      int[] counts = new int[model.size()];
      boolean any = false;
      for (int k = 0; k < pattern.part().length; k++) {
        int i = pattern.part()[k];
        counts[i] = Math.min(pattern.count()[k], wanted[i]);
        any |= counts[i] > 0;
      }
      if (!any) {
        return;
      }
      take(Pattern.of(pattern.stock(), counts), 1);
    }
  }

  private void take(Pattern pattern, int n) {
    for (int k = 0; k < pattern.part().length; k++) {
      wanted[pattern.part()[k]] -= n * pattern.count()[k];
      pieces -= (long) n * pattern.count()[k];
    }
    if (model.limited(pattern.stock())) {
      left[pattern.stock()] -= n;
    }
    cost += n * model.cost[pattern.stock()];
    patterns.add(pattern);
    times.add(n);
  }

  /** True if every piece has its bar and no limited stock is overdrawn. */
  boolean complete() {
    if (pieces != 0) {
      return false;
    }
    for (int s = 0; s < left.length; s++) {
      if (left[s] < 0) {
        return false;
      }
    }
    return true;
  }

  long cost() {
    return cost;
  }

  /** Pieces without a bar. */
  long pieces() {
    return pieces;
  }

  List<Pattern> patterns() {
    return patterns;
  }

  /** Bars of the pattern at {@code index}. */
  int times(int index) {
    return times.get(index);
  }
}
