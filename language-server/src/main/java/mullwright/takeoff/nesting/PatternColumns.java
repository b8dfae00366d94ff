package mullwright.takeoff.nesting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The columns of the linear programme over patterns: sparse, in the order they were added. */
final class PatternColumns {
  private final List<Pattern> patterns = new ArrayList<>();
  private int[] start = new int[256];
  private int[] rowIndex = new int[1024];
  private double[] entry = new double[1024];
  private double[] cost = new double[256];
  private boolean[] barred = new boolean[256];

  /**
   * Adds a column and returns its index.
   *
   * @param cost in fractions of the dearest stock's cost
   * @param stockRow row of the limited stock it is cut from, -1 if there is no limit
   */
  int append(Pattern pattern, double cost, int stockRow) {
    int j = patterns.size();
    if (j + 2 > start.length) {
      start = Arrays.copyOf(start, 2 * start.length);
      this.cost = Arrays.copyOf(this.cost, start.length);
      barred = Arrays.copyOf(barred, start.length);
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
    if (stockRow >= 0) {
      rowIndex[from] = stockRow;
      entry[from++] = 1;
    }
    start[j + 1] = from;
    this.cost[j] = cost;
    patterns.add(pattern);
    return j;
  }

  int size() {
    return patterns.size();
  }

  /** So many columns there is room for; arrays beside this one are made as long. */
  int room() {
    return start.length;
  }

  Pattern pattern(int j) {
    return patterns.get(j);
  }

  double cost(int j) {
    return cost[j];
  }

  boolean barred(int j) {
    return barred[j];
  }

  void bar(int j, boolean is) {
    barred[j] = is;
  }

  /** The product of a row and column {@code j}. */
  double along(double[] row, int j) {
    double sum = 0;
    int to = start[j + 1];
    for (int k = start[j]; k < to; k++) {
      sum += row[rowIndex[k]] * entry[k];
    }
    return sum;
  }

  /** What is left of the cost of column {@code j} at those prices. */
  double reducedCost(double[] prices, int j) {
    double sum = cost[j];
    int to = start[j + 1];
    for (int k = start[j]; k < to; k++) {
      sum -= prices[rowIndex[k]] * entry[k];
    }
    return sum;
  }

  /** Writes column {@code j} into column {@code at} of a matrix of zeros. */
  void write(int j, double[][] matrix, int at) {
    for (int k = start[j]; k < start[j + 1]; k++) {
      matrix[rowIndex[k]][at] = entry[k];
    }
  }
}
