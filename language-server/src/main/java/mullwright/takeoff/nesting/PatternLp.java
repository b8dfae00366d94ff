package mullwright.takeoff.nesting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The linear programme over cutting patterns: least cost of (fractional) bars that yield every part
 * and keep within limited stocks.
 *
 * <p>A revised simplex with a dense inverse of the basis. One row for each width ({@code >=}
 * wanted) and one for each limited stock ({@code <=} available). Patterns can be added, barred and
 * the right-hand side changed at any time: {@link #solve} restores first the signs of the values by
 * dual steps, then those of the reduced costs by primal steps. Costs are divided by the dearest
 * stock so that tolerances mean the same for every order. Its numbers guide the search; no claim
 * rests on them.
 */
final class PatternLp {
  private static final double PIVOT = 1e-9;
  private static final double REDUCED = 1e-9;
  private static final double INFEASIBLE = 1e-9;
  private static final int REFRESH = 100;
  private static final int LEAST_AT_HAND = 400;
  private static final int NONE = Integer.MIN_VALUE;
  private static final double NUDGE = 1e-6;

  private final CutModel model;
  private final Effort effort;
  private final int parts;
  private final int rows;
  private final int[] rowOfStock;
  private final double unit;

  private final List<Pattern> patterns = new ArrayList<>();
  private int columns;
  private int[] start = new int[256];
  private int[] rowIndex = new int[1024];
  private double[] entry = new double[1024];
  private double[] cost = new double[256];
  private boolean[] barred = new boolean[256];
  private int[] place = new int[256];
  private double[] reduced = new double[256];

  /** Basic column of each row: a pattern's index, or {@code ~row} for that row's slack. */
  private final int[] head;

  private final int[] slackPlace;
  private double[][] inverse;
  private final double[] value;
  private final double[] right;
  private final double[] nudge;
  private final double[] dual;
  private final double[] step;
  private int pivots;
  private double ratio;

  /** Columns looked at for the next primal step, and how long a step along each is. */
  private int[] atHand = new int[256];

  private int atHandCount;
  private double[] weight = new double[256];
  private double[] sorted = new double[256];
  private final double[] slackWeight;

  /**
   * A programme whose first columns cut one piece each from an unlimited stock.
   *
   * @param singles their cost in bars: 1 if they are patterns like others, more if they only stand
   *     in for what the patterns given cannot do
   */
  PatternLp(CutModel model, double singles, Effort effort) {
    this.model = model;
    this.effort = effort;
    this.parts = model.size();
    this.rowOfStock = new int[model.stocks()];
    int count = parts;
    for (int s = 0; s < model.stocks(); s++) {
      rowOfStock[s] = model.limited(s) ? count++ : -1;
    }
    this.rows = count;
    this.unit = 1.0 / Math.max(1, model.largestCost);
    this.head = new int[rows];
    this.slackPlace = new int[rows];
    this.inverse = new double[rows][rows];
    this.value = new double[rows];
    this.right = new double[rows];
    this.dual = new double[rows];
    this.step = new double[rows];
    this.slackWeight = new double[rows];
    for (int i = 0; i < parts; i++) {
      addSingle(i, singles);
    }
    for (int i = 0; i + 1 < parts; i++) {
      append(new Pattern(-1, new int[] {i, i + 1}, new int[] {-1, 1}), 0);
    }
    exchange(false);
    // a little more of everything, of each a different little, so that few steps stand still
    this.nudge = new double[parts];
    nudge(1, NUDGE, NUDGE);
    setRight(model.demand, model.available);
    reset();
  }

  /** A column that cuts one piece of width {@code i}, so that there always is a solution. */
  private void addSingle(int i, double factor) {
    int cheapest = -1;
    for (int s = 0; s < model.stocks(); s++) {
      if (!model.limited(s)
          && model.fit(i, s) > 0
          && (cheapest < 0 || model.cost[s] < model.cost[cheapest])) {
        cheapest = s;
      }
    }
    append(
        new Pattern(cheapest, new int[] {i}, new int[] {1}), model.cost[cheapest] * unit * factor);
  }

  /**
   * Allows or forbids the use of a wide piece as the next narrower one.
   *
   * <p>Allowed, prices cannot rise as widths fall, which keeps them from wandering while few
   * patterns are known (dual-optimal inequalities); forbidden, every value is a number of bars.
   */
  void exchange(boolean allowed) {
    for (int j = parts; j < firstPattern(); j++) {
      barred[j] = !allowed;
    }
  }

  /** Index of the first pattern added. */
  int firstPattern() {
    return parts + Math.max(0, parts - 1);
  }

  /** Adds a pattern and returns its index. */
  int add(Pattern pattern) {
    return append(pattern, model.cost[pattern.stock()] * unit);
  }

  private int append(Pattern pattern, double price) {
    int j = columns++;
    if (j + 2 > start.length) {
      int size = 2 * start.length;
      start = Arrays.copyOf(start, size);
      cost = Arrays.copyOf(cost, size);
      barred = Arrays.copyOf(barred, size);
      place = Arrays.copyOf(place, size);
      reduced = Arrays.copyOf(reduced, size);
      atHand = Arrays.copyOf(atHand, size);
      weight = Arrays.copyOf(weight, size);
      sorted = Arrays.copyOf(sorted, size);
    }
    int from = start[j];
    int size = pattern.part().length;
    if (from + size + 1 > rowIndex.length) {
      rowIndex = Arrays.copyOf(rowIndex, 2 * rowIndex.length + size);
      entry = Arrays.copyOf(entry, rowIndex.length);
    }
    for (int k = 0; k < size; k++) {
      rowIndex[from + k] = pattern.part()[k];
      entry[from + k] = pattern.count()[k];
    }
    from += size;
    if (pattern.stock() >= 0 && rowOfStock[pattern.stock()] >= 0) {
      rowIndex[from] = rowOfStock[pattern.stock()];
      entry[from++] = 1;
    }
    start[j + 1] = from;
    cost[j] = price;
    barred[j] = false;
    place[j] = -1;
    patterns.add(pattern);
    return j;
  }

  /**
   * Asks for a little more of everything: between {@code least} and {@code least + spread}, drawn
   * by a fixed rule from {@code seed}. Another seed leads to other prices among those that are
   * best.
   */
  void nudge(int seed, double least, double spread) {
    long mix = seed;
    for (int i = 0; i < parts; i++) {
      mix = mix * 6364136223846793005L + 1442695040888963407L;
      nudge[i] = least + spread * ((mix >>> 40) / (double) (1 << 24));
    }
  }

  /** Sets what is wanted and what is left of limited stocks. */
  void setRight(int[] wanted, int[] left) {
    for (int i = 0; i < parts; i++) {
      right[i] = wanted[i] == 0 ? 0 : wanted[i] + nudge[i];
    }
    for (int s = 0; s < left.length; s++) {
      if (rowOfStock[s] >= 0) {
        right[rowOfStock[s]] = Math.max(0, left[s]);
      }
    }
  }

  /** Starts again from the basis that cuts every piece by itself. */
  private void reset() {
    Arrays.fill(place, 0, columns, -1);
    Arrays.fill(slackPlace, -1);
    for (int i = 0; i < rows; i++) {
      Arrays.fill(inverse[i], 0);
      inverse[i][i] = 1;
      if (i < parts) {
        head[i] = i;
        place[i] = i;
      } else {
        head[i] = ~i;
        slackPlace[i] = i;
      }
    }
    pivots = 0;
  }

  /** Solves to optimality over the patterns not barred; false if numbers or effort gave out. */
  boolean solve() {
    computeValues();
    for (int attempt = 0; attempt < 3; attempt++) {
      boolean feasible = restore();
      if (!feasible) {
        reset();
        computeValues();
      }
      if (improve()) {
        return true;
      }
      if (effort.spent()) {
        return false;
      }
      reset();
      computeValues();
    }
    return false;
  }

  /** Total cost of the current solution in the model's units. */
  double objective() {
    double sum = 0;
    for (int i = 0; i < rows; i++) {
      if (head[i] >= 0) {
        sum += cost[head[i]] * value[i];
      }
    }
    return sum / unit;
  }

  /** Price of one piece of width {@code i} in fractions of the dearest stock's cost. */
  double price(int i) {
    return dual[i];
  }

  /** Premium of limited stock {@code s} in fractions of the dearest stock's cost, at least 0. */
  double premium(int s) {
    return rowOfStock[s] < 0 ? 0 : Math.max(0, -dual[rowOfStock[s]]);
  }

  int rows() {
    return rows;
  }

  int columns() {
    return columns;
  }

  Pattern pattern(int j) {
    return patterns.get(j);
  }

  /** Column in basis position {@code i}, negative for a slack. */
  int basic(int i) {
    return head[i];
  }

  double value(int i) {
    return value[i];
  }

  void bar(int j, boolean is) {
    barred[j] = is;
  }

  boolean barred(int j) {
    return barred[j];
  }

  /** Reduced cost of column {@code j} in fractions of the dearest stock's cost. */
  double reducedCost(int j) {
    double sum = cost[j];
    for (int k = start[j]; k < start[j + 1]; k++) {
      sum -= dual[rowIndex[k]] * entry[k];
    }
    return sum;
  }

  // ---- steps ----

  private void computeValues() {
    for (int i = 0; i < rows; i++) {
      double sum = 0;
      double[] row = inverse[i];
      for (int k = 0; k < rows; k++) {
        sum += row[k] * right[k];
      }
      value[i] = sum;
    }
  }

  private void computeDuals() {
    Arrays.fill(dual, 0);
    for (int i = 0; i < rows; i++) {
      double c = head[i] >= 0 ? cost[head[i]] : 0;
      if (c != 0) {
        double[] row = inverse[i];
        for (int k = 0; k < rows; k++) {
          dual[k] += c * row[k];
        }
      }
    }
  }

  /** Inverts the basis afresh; false if it has become singular. */
  private boolean refactor() {
    double[][] left = new double[rows][rows];
    for (int i = 0; i < rows; i++) {
      int j = head[i];
      if (j < 0) {
        left[~j][i] = ~j < parts ? -1 : 1;
      } else {
        for (int k = start[j]; k < start[j + 1]; k++) {
          left[rowIndex[k]][i] = entry[k];
        }
      }
    }
    double[][] fresh = Inverse.of(left);
    effort.add((long) rows * rows * rows / 4);
    if (fresh == null) {
      return false;
    }
    inverse = fresh;
    pivots = 0;
    return true;
  }

  /**
   * Primal steps until no reduced cost is negative.
   *
   * <p>The entering column is chosen by the square of its reduced cost over a weight that tells how
   * long a step along it is (reference weights, textbook), among the columns whose reduced costs
   * were least when they were last computed for all.
   */
  private boolean improve() {
    int idle = 0;
    while (true) {
      computeDuals();
      if (!gather()) {
        return true;
      }
      for (int enter = choose(false); enter != NONE; enter = choose(idle > 2 * rows + 50)) {
        if (pivots >= REFRESH + rows) {
          if (!refactor()) {
            return false;
          }
          computeValues();
          break;
        }
        if ((pivots & 31) == 31 && effort.spent()) {
          return false;
        }
        double slope = enter >= 0 ? reducedCost(enter) : slackReduced(~enter);
        if (slope >= -REDUCED) {
          reduced[enter] = slope;
          continue;
        }
        direction(enter);
        int leave = leaving();
        if (leave < 0) {
          return false;
        }
        idle = ratio > 1e-10 ? 0 : idle + 1;
        exchangeWeights(enter, leave, slope);
        double shift = slope / step[leave];
        double[] row = inverse[leave];
        for (int k = 0; k < rows; k++) {
          dual[k] += shift * row[k];
        }
        pivot(enter, leave, ratio);
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
      double a = step[i];
      if (a > PIVOT) {
        double at = Math.max(0, value[i]) / a;
        if (at < least - 1e-12 || (at <= least + 1e-12 && a > step[leave])) {
          least = Math.min(at, least);
          leave = i;
        }
      } else if (a < -PIVOT && head[i] >= 0 && barred[head[i]]) {
        // a barred pattern may not grow from its value of zero
        if (least > 1e-12 || -a > Math.abs(step[leave])) {
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
    boolean negative = false;
    int n = 0;
    for (int j = 0; j < columns; j++) {
      if (place[j] < 0 && !barred[j]) {
        reduced[j] = reducedCost(j);
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
    for (int j = 0; j < columns; j++) {
      if (place[j] < 0
          && !barred[j]
          && (reduced[j] < limit || (reduced[j] == limit && room-- > 0))) {
        weight[j] = 1;
        atHand[atHandCount++] = j;
      }
    }
    for (int r = 0; r < rows; r++) {
      slackWeight[r] = 1;
      negative |= slackPlace[r] < 0 && slackReduced(r) < -REDUCED;
    }
    effort.add(5L * columns + (long) rows * rows / 4);
    return negative;
  }

  /** The column or slack to enter; the first that would do where {@code first} is asked for. */
  private int choose(boolean first) {
    int best = NONE;
    double most = 0;
    for (int r = 0; r < rows; r++) {
      if (slackPlace[r] < 0) {
        double d = slackReduced(r);
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
    double pivot = step[leave];
    double[] row = inverse[leave];
    double entering = enter >= 0 ? weight[enter] : slackWeight[~enter];
    for (int k = 0; k < atHandCount; k++) {
      int j = atHand[k];
      double a = 0;
      int to = start[j + 1];
      for (int t = start[j]; t < to; t++) {
        a += row[rowIndex[t]] * entry[t];
      }
      if (a != 0) {
        double by = a / pivot;
        reduced[j] -= slope * by;
        weight[j] = Math.max(weight[j], by * by * entering);
      }
    }
    for (int r = 0; r < rows; r++) {
      if (slackPlace[r] < 0 && row[r] != 0) {
        double by = row[r] / pivot;
        slackWeight[r] = Math.max(slackWeight[r], by * by * entering);
      }
    }
    if (enter >= 0) {
      for (int k = 0; k < atHandCount; k++) {
        if (atHand[k] == enter) {
          atHand[k] = atHand[--atHandCount];
          break;
        }
      }
    }
    int out = head[leave];
    double back = Math.max(1, entering / (pivot * pivot));
    if (out < 0) {
      slackWeight[~out] = back;
    } else if (!barred[out]) {
      reduced[out] = -slope / pivot;
      weight[out] = back;
      atHand[atHandCount++] = out;
    }
    effort.add(5L * atHandCount + (long) rows * rows / 2);
  }

  private double slackReduced(int row) {
    return row < parts ? dual[row] : -dual[row];
  }

  /** Puts into {@link #step} how the basic values fall as column {@code enter} grows. */
  private void direction(int enter) {
    if (enter < 0) {
      int r = ~enter;
      double sign = r < parts ? -1 : 1;
      for (int i = 0; i < rows; i++) {
        step[i] = sign * inverse[i][r];
      }
      return;
    }
    int from = start[enter];
    int to = start[enter + 1];
    for (int i = 0; i < rows; i++) {
      double[] row = inverse[i];
      double sum = 0;
      for (int k = from; k < to; k++) {
        sum += row[rowIndex[k]] * entry[k];
      }
      step[i] = sum;
    }
  }

  private void pivot(int enter, int leave, double amount) {
    double a = step[leave];
    double[] row = inverse[leave];
    double by = 1 / a;
    for (int k = 0; k < rows; k++) {
      row[k] *= by;
    }
    for (int i = 0; i < rows; i++) {
      double f = step[i];
      if (i == leave || f == 0) {
        continue;
      }
      if (Math.abs(f) < 1e-13) {
        continue;
      }
      subtract(inverse[i], row, f);
      value[i] -= f * amount;
    }
    value[leave] = amount;
    int out = head[leave];
    if (out >= 0) {
      place[out] = -1;
    } else {
      slackPlace[~out] = -1;
    }
    head[leave] = enter;
    if (enter >= 0) {
      place[enter] = leave;
    } else {
      slackPlace[~enter] = leave;
    }
    pivots++;
  }

  private static void subtract(double[] target, double[] row, double factor) {
    for (int k = 0; k < target.length; k++) {
      target[k] -= factor * row[k];
    }
  }

  /**
   * Dual steps until no value is negative and every barred pattern is out.
   *
   * <p>Patterns whose reduced cost is negative stay out of it; primal steps bring them in later.
   */
  private boolean restore() {
    boolean prepared = false;
    for (int round = 0; ; round++) {
      int leave = -1;
      double worst = INFEASIBLE;
      for (int i = 0; i < rows; i++) {
        double wrong = head[i] >= 0 && barred[head[i]] ? Math.abs(value[i]) : -value[i];
        if (wrong > worst) {
          worst = wrong;
          leave = i;
        }
      }
      if (leave < 0) {
        return true;
      }
      if (round > 20 * rows + 200 || effort.spent()) {
        return false;
      }
      if (!prepared || pivots >= REFRESH + rows) {
        if (pivots >= REFRESH + rows) {
          if (!refactor()) {
            return false;
          }
          computeValues();
        }
        computeDuals();
        for (int j = 0; j < columns; j++) {
          reduced[j] = place[j] >= 0 ? 0 : reducedCost(j);
        }
        prepared = true;
      }
      // the leaving value must rise to zero (sign 1) or fall to zero (sign -1)
      double sign = value[leave] < 0 ? 1 : -1;
      double[] row = inverse[leave];
      int enter = NONE;
      double least = Double.MAX_VALUE;
      double size = 0;
      for (int r = 0; r < rows; r++) {
        if (slackPlace[r] < 0) {
          double a = -sign * (r < parts ? -row[r] : row[r]);
          double d = slackReduced(r);
          if (a > 1e-8 && d > -REDUCED) {
            double ratio = Math.max(0, d) / a;
            if (ratio < least - 1e-11 || (ratio <= least + 1e-11 && a > size)) {
              least = Math.min(least, ratio);
              size = a;
              enter = ~r;
            }
          }
        }
      }
      for (int j = 0; j < columns; j++) {
        if (place[j] >= 0 || barred[j]) {
          continue;
        }
        double a = 0;
        for (int k = start[j]; k < start[j + 1]; k++) {
          a += row[rowIndex[k]] * entry[k];
        }
        sorted[j] = a;
        a *= -sign;
        if (a > 1e-8 && reduced[j] > -REDUCED) {
          double ratio = Math.max(0, reduced[j]) / a;
          if (ratio < least - 1e-11 || (ratio <= least + 1e-11 && a > size)) {
            least = Math.min(least, ratio);
            size = a;
            enter = j;
          }
        }
      }
      effort.add(5L * columns + (long) rows * rows / 2);
      if (enter == NONE) {
        return false;
      }
      direction(enter);
      double slope = enter >= 0 ? reduced[enter] : slackReduced(~enter);
      double shift = slope / step[leave];
      for (int k = 0; k < rows; k++) {
        dual[k] += shift * row[k];
      }
      for (int j = 0; j < columns; j++) {
        if (place[j] < 0 && !barred[j]) {
          reduced[j] -= shift * sorted[j];
        }
      }
      int out = head[leave];
      if (out >= 0) {
        reduced[out] = -shift;
      }
      pivot(enter, leave, value[leave] / step[leave]);
    }
  }
}
