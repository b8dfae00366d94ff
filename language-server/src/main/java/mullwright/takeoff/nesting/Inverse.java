package mullwright.takeoff.nesting;

/** The inverse of a square matrix by elimination with the largest pivot of each column. */
final class Inverse {
  private static final double SINGULAR = 1e-11;

  private Inverse() {}

  /** The inverse of {@code matrix}, which is used up; null if it is singular. */
  static double[][] of(double[][] matrix) {
    int n = matrix.length;
    double[][] inverse = new double[n][n];
    for (int i = 0; i < n; i++) {
      inverse[i][i] = 1;
    }
    for (int c = 0; c < n; c++) {
      int best = c;
      for (int r = c + 1; r < n; r++) {
        if (Math.abs(matrix[r][c]) > Math.abs(matrix[best][c])) {
          best = r;
        }
      }
      if (Math.abs(matrix[best][c]) < SINGULAR) {
        return null;
      }
      swap(matrix, c, best);
      swap(inverse, c, best);
      double by = 1 / matrix[c][c];
      scale(matrix[c], by);
      scale(inverse[c], by);
      for (int r = 0; r < n; r++) {
        double f = matrix[r][c];
        if (r != c && f != 0) {
          subtract(matrix[r], matrix[c], f);
          subtract(inverse[r], inverse[c], f);
        }
      }
    }
    return inverse;
  }

  private static void swap(double[][] m, int a, int b) {
    double[] row = m[a];
    m[a] = m[b];
    m[b] = row;
  }

  private static void scale(double[] row, double by) {
    for (int k = 0; k < row.length; k++) {
      row[k] *= by;
    }
  }

  private static void subtract(double[] target, double[] row, double factor) {
    for (int k = 0; k < target.length; k++) {
      target[k] -= factor * row[k];
    }
  }
}
