package mullwright.takeoff.nesting;

import java.util.BitSet;

/** The totals that a sum of stock costs can have: a bound may be raised to the next of them. */
final class Totals {
  private static final int MOST = 4_000_000;

  private final long step;
  private final int size;
  private final BitSet possible;

  /**
   * Totals up to {@code upTo}; beyond a fixed size only the costs' common divisor is used.
   *
   * <p>A shortage is not a cost that a plan can have: totals are those of real stocks.
   */
  Totals(CutModel model, long upTo) {
    long divisor = 0;
    for (int s = 0; s < model.stocks(); s++) {
      if (s != model.shortage) {
        divisor = CutModel.gcd(model.cost[s], divisor);
      }
    }
    step = model.shortage >= 0 ? 1 : Math.max(1, divisor);
    // a plan that costs as much as a shortage is none, so totals beyond are left as they are
    long most = (model.shortage >= 0 ? Math.min(upTo, model.shortageCost - 1) : upTo) / step + 1;
    if (most > MOST) {
      size = 0;
      possible = null;
      return;
    }
    int n = (int) most;
    size = n;
    possible = new BitSet(n);
    possible.set(0);
    for (int s = 0; s < model.stocks(); s++) {
      int c = (int) Math.min(n, model.cost[s] / step);
      if (c == 0 || s == model.shortage) {
        continue;
      }
      int[] used = new int[n];
      for (int t = c; t < n; t++) {
        if (!possible.get(t) && possible.get(t - c) && used[t - c] < model.available[s]) {
          possible.set(t);
          used[t] = used[t - c] + 1;
        }
      }
    }
  }

  /** The least total not below {@code cost}; {@code cost} itself raised to the divisor at least. */
  long atLeast(long cost) {
    if (cost <= 0) {
      return 0;
    }
    long steps = (cost + step - 1) / step;
    if (possible != null && steps < size) {
      int next = possible.nextSetBit((int) steps);
      if (next >= 0) {
        return next * step;
      }
    }
    return steps * step;
  }

  /** The greatest total below {@code cost}, or -1 if there is none. */
  long below(long cost) {
    if (cost <= 0) {
      return -1;
    }
    long steps = (cost - 1) / step;
    if (possible != null && steps < size) {
      return possible.previousSetBit((int) steps) * step;
    }
    return steps * step;
  }
}
