package mullwright.takeoff.nesting;

import java.util.Arrays;

/**
 * The basis of the linear programme over patterns: which columns carry the solution, with a dense
 * inverse, the values of the basic columns and the prices of the rows.
 *
 * <p>Its first rows are those of the widths ({@code >=} wanted, with a surplus), the others those
 * of limited stocks ({@code <=} available, with a slack). A column outside is entered by {@link
 * #direction} and {@link #pivot}.
 */
final class PatternBasis {
  /** After so many pivots and one for each row the inverse is made afresh. */
  private static final int REFRESH = 100;

  private static final double NOTHING = 1e-13;

  private final PatternColumns columns;
  private final Effort effort;
  private final int parts;
  private final int rows;

  /** Basic column of each row: a pattern's index, or {@code ~row} for that row's slack. */
  private final int[] head;

  private final int[] slackPlace;
  private int[] place = new int[256];
  private double[][] inverse;
  private final double[] value;
  private final double[] right;
  private final double[] dual;
  private final double[] step;
  private int pivots;

  /**
   * @param parts rows of widths, the first ones
   * @param rows all rows
   */
  PatternBasis(PatternColumns columns, int parts, int rows, Effort effort) {
    this.columns = columns;
    this.effort = effort;
    this.parts = parts;
    this.rows = rows;
    this.head = new int[rows];
    this.slackPlace = new int[rows];
    this.inverse = new double[rows][rows];
    this.value = new double[rows];
    this.right = new double[rows];
    this.dual = new double[rows];
    this.step = new double[rows];
  }

  /** Takes note of a column just added, which stands outside. */
  void admit(int j) {
    if (j >= place.length) {
      place = Arrays.copyOf(place, columns.room());
    }
    place[j] = -1;
  }

  /** Starts again from the basis that cuts every piece by itself. */
  void reset() {
    Arrays.fill(place, 0, columns.size(), -1);
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

  int rows() {
    return rows;
  }

  /** Column in basis position {@code i}, negative for a slack. */
  int head(int i) {
    return head[i];
  }

  /** True if the column in basis position {@code i} is a pattern that may not be used. */
  boolean barred(int i) {
    return head[i] >= 0 && columns.barred(head[i]);
  }

  /** True if column {@code j} stands outside and may enter. */
  boolean mayEnter(int j) {
    return place[j] < 0 && !columns.barred(j);
  }

  boolean outside(int j) {
    return place[j] < 0;
  }

  boolean slackOutside(int row) {
    return slackPlace[row] < 0;
  }

  double value(int i) {
    return value[i];
  }

  /** What a row asks for. */
  void right(int row, double amount) {
    right[row] = amount;
  }

  /** Price of a row. */
  double dual(int row) {
    return dual[row];
  }

  /** The row of the inverse that belongs to basis position {@code i}; not to be written to. */
  double[] row(int i) {
    return inverse[i];
  }

  /** How the value in basis position {@code i} falls as the column of {@link #direction} grows. */
  double step(int i) {
    return step[i];
  }

  double reducedCost(int j) {
    return columns.reducedCost(dual, j);
  }

  double slackReduced(int row) {
    return row < parts ? dual[row] : -dual[row];
  }

  /** The entry of a row's slack in a row of the inverse. */
  double slackAlong(double[] row, int slack) {
    return slack < parts ? -row[slack] : row[slack];
  }

  /** Cost of the basic columns at their values. */
  double cost() {
    double sum = 0;
    for (int i = 0; i < rows; i++) {
      if (head[i] >= 0) {
        sum += columns.cost(head[i]) * value[i];
      }
    }
    return sum;
  }

  void computeValues() {
    for (int i = 0; i < rows; i++) {
      double sum = 0;
      double[] row = inverse[i];
      for (int k = 0; k < rows; k++) {
        sum += row[k] * right[k];
      }
      value[i] = sum;
    }
  }

  void computeDuals() {
    Arrays.fill(dual, 0);
    for (int i = 0; i < rows; i++) {
      double c = head[i] >= 0 ? columns.cost(head[i]) : 0;
      if (c != 0) {
        shiftDuals(c, i);
      }
    }
  }

  /** Adds to the prices so many times the row of basis position {@code i}. */
  void shiftDuals(double by, int i) {
    double[] row = inverse[i];
    for (int k = 0; k < rows; k++) {
      dual[k] += by * row[k];
    }
  }

  /** True once the inverse has gone through so many pivots that it should be made afresh. */
  boolean worn() {
    return pivots >= REFRESH + rows;
  }

  /** Pivots since the inverse was made. */
  int pivots() {
    return pivots;
  }

  /** Inverts the basis afresh and computes the values; false if it has become singular. */
  boolean refresh() {
    double[][] left = new double[rows][rows];
    for (int i = 0; i < rows; i++) {
      int j = head[i];
      if (j < 0) {
        left[~j][i] = ~j < parts ? -1 : 1;
      } else {
        columns.write(j, left, i);
      }
    }
    double[][] fresh = Inverse.of(left);
    effort.add((long) rows * rows * rows / 4);
    if (fresh == null) {
      return false;
    }
    inverse = fresh;
    pivots = 0;
    computeValues();
    return true;
  }

  /** Computes {@link #step} for a column, or a slack as {@code ~row}. */
  void direction(int enter) {
    if (enter < 0) {
      int r = ~enter;
      double sign = r < parts ? -1 : 1;
      for (int i = 0; i < rows; i++) {
        step[i] = sign * inverse[i][r];
      }
      return;
    }
    for (int i = 0; i < rows; i++) {
      step[i] = columns.along(inverse[i], enter);
    }
  }

  /** Puts a column, whose direction was computed, in the place of another at that amount. */
  void pivot(int enter, int leave, double amount) {
    double[] row = inverse[leave];
    double by = 1 / step[leave];
    for (int k = 0; k < rows; k++) {
      row[k] *= by;
    }
    for (int i = 0; i < rows; i++) {
      double f = step[i];
      if (i == leave || Math.abs(f) < NOTHING) {
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
}
