package mullwright.takeoff.nesting;

import java.util.Arrays;

/**
 * Primal steps: columns of negative reduced cost enter until there is none.
 *
 * <p>The entering column is chosen by the square of its reduced cost over a weight that tells how
 * long a step along it is (reference weights, textbook), among the columns whose reduced costs were
 * least when they were last computed for all.
 */
final class PrimalSteps {
  /** A reduced cost below its negative may enter. */
  static final double REDUCED = 1e-9;

  /** No column. */
  static final int NONE = Integer.MIN_VALUE;

  private static final double PIVOT = 1e-9;
  private static final int LEAST_AT_HAND = 400;
  private static final int EFFORT_EVERY = 31;

  private final PatternColumns columns;
  private final PatternBasis basis;
  private final Effort effort;
  private final int rows;
  private final double[] slackWeight;

  /** Columns looked at for the next step, and how long a step along each is. */
  private int[] atHand = new int[0];

  private int atHandCount;
  private double[] weight = new double[0];
  private double[] reduced = new double[0];
  private double[] sorted = new double[0];
  private double ratio;

  PrimalSteps(PatternColumns columns, PatternBasis basis, Effort effort) {
    this.columns = columns;
    this.basis = basis;
    this.effort = effort;
    this.rows = basis.rows();
    this.slackWeight = new double[rows];
  }

  /** Goes to the end; false if numbers or effort gave out. */
  boolean improve() {
    int idle = 0;
    while (true) {
      basis.computeDuals();
      if (!gather()) {
        return true;
      }
      for (int enter = choose(false); enter != NONE; enter = choose(idle > 2 * rows + 50)) {
        if (basis.worn()) {
          if (!basis.refresh()) {
            return false;
          }
          break;
        }
        if ((basis.pivots() & EFFORT_EVERY) == EFFORT_EVERY && effort.spent()) {
          return false;
        }
        double slope = enter >= 0 ? basis.reducedCost(enter) : basis.slackReduced(~enter);
        if (slope >= -REDUCED) {
          // only a column's reduced cost drifts: a slack's is read off the prices
          reduced[enter] = slope;
          continue;
        }
        basis.direction(enter);
        int leave = leaving();
        if (leave < 0) {
          return false;
        }
        idle = ratio > 1e-10 ? 0 : idle + 1;
        exchangeWeights(enter, leave, slope);
        basis.shiftDuals(slope / basis.step(leave), leave);
        basis.pivot(enter, leave, ratio);
      }
      if (effort.spent()) {
        return false;
      }
    }
  }

  /** The row whose value first falls to zero, its step in {@link #ratio}; -1 if none does. */
  private int leaving() {
    int leave = -1;
    double least = Double.MAX_VALUE;
    for (int i = 0; i < rows; i++) {
      double a = basis.step(i);
      if (a > PIVOT) {
        double at = Math.max(0, basis.value(i)) / a;
        if (at < least - 1e-12 || (at <= least + 1e-12 && a > basis.step(leave))) {
          least = Math.min(at, least);
          leave = i;
        }
      } else if (a < -PIVOT && basis.barred(i)) {
        // a barred pattern may not grow from its value of zero
        if (least > 1e-12 || -a > Math.abs(basis.step(leave))) {
          least = 0;
          leave = i;
        }
      }
    }
    ratio = least;
    return leave;
  }

  /**
   * Computes all reduced costs and keeps the columns of the least at hand; false if none is
   * negative.
   */
  private boolean gather() {
    makeRoom();
    int count = columns.size();
    boolean negative = false;
    int n = 0;
    for (int j = 0; j < count; j++) {
      if (basis.mayEnter(j)) {
        reduced[j] = basis.reducedCost(j);
        negative |= reduced[j] < -REDUCED;
        sorted[n++] = reduced[j];
      }
    }
    int most = Math.max(LEAST_AT_HAND, 2 * rows);
    double limit = Double.MAX_VALUE;
    if (n > most) {
      Arrays.sort(sorted, 0, n);
      limit = sorted[most];
    }
    atHandCount = 0;
    int below = 0;
    while (below < n && sorted[below] < limit) {
      below++;
    }
    // all below the limit, and of those at it as many as there is room for
    int room = Math.max(0, most - below);
    for (int j = 0; j < count; j++) {
      if (basis.mayEnter(j) && (reduced[j] < limit || (reduced[j] == limit && room-- > 0))) {
        weight[j] = 1;
        atHand[atHandCount++] = j;
      }
    }
    for (int r = 0; r < rows; r++) {
      slackWeight[r] = 1;
      negative |= basis.slackOutside(r) && basis.slackReduced(r) < -REDUCED;
    }
    effort.add(5L * count + (long) rows * rows / 4);
    return negative;
  }

  private void makeRoom() {
    if (reduced.length < columns.room()) {
      reduced = Arrays.copyOf(reduced, columns.room());
      sorted = Arrays.copyOf(sorted, columns.room());
      weight = Arrays.copyOf(weight, columns.room());
      atHand = Arrays.copyOf(atHand, columns.room());
    }
  }

  /** The column or slack to enter; the first that would do where {@code first} is asked for. */
  private int choose(boolean first) {
    int best = NONE;
    double most = 0;
    for (int r = 0; r < rows; r++) {
      if (basis.slackOutside(r)) {
        double d = basis.slackReduced(r);
        if (d < -REDUCED && d * d > most * slackWeight[r]) {
          most = d * d / slackWeight[r];
          best = ~r;
          if (first) {
            return best;
          }
        }
      }
    }
    for (int k = 0; k < atHandCount; k++) {
      int j = atHand[k];
      double d = reduced[j];
      if (d < -REDUCED && d * d > most * weight[j]) {
        most = d * d / weight[j];
        best = j;
        if (first) {
          return best;
        }
      }
    }
    effort.add(atHandCount + rows);
    return best;
  }

  /** Brings reduced costs and weights of the columns at hand up to date with a coming pivot. */
  private void exchangeWeights(int enter, int leave, double slope) {
    double pivot = basis.step(leave);
    double[] row = basis.row(leave);
    double entering = enter >= 0 ? weight[enter] : slackWeight[~enter];
    for (int k = 0; k < atHandCount; k++) {
      int j = atHand[k];
      double a = columns.along(row, j);
      if (a != 0) {
        double by = a / pivot;
        reduced[j] -= slope * by;
        weight[j] = Math.max(weight[j], by * by * entering);
      }
    }
    for (int r = 0; r < rows; r++) {
      if (basis.slackOutside(r) && row[r] != 0) {
        double by = row[r] / pivot;
        slackWeight[r] = Math.max(slackWeight[r], by * by * entering);
      }
    }
    if (enter >= 0) {
      putAway(enter);
    }
    int out = basis.head(leave);
    double back = Math.max(1, entering / (pivot * pivot));
    if (out < 0) {
      slackWeight[~out] = back;
    } else if (!columns.barred(out)) {
      reduced[out] = -slope / pivot;
      weight[out] = back;
      atHand[atHandCount++] = out;
    }
    effort.add(5L * atHandCount + (long) rows * rows / 2);
  }

  private void putAway(int column) {
    for (int k = 0; k < atHandCount; k++) {
      if (atHand[k] == column) {
        atHand[k] = atHand[--atHandCount];
        return;
      }
    }
  }
}
