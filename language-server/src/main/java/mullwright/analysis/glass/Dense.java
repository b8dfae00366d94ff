package mullwright.analysis.glass;

/**
 * Solves the small dense linear systems of {@link PlateEquations}.
 *
 * <p>All loops run along rows, which the processor takes several numbers at a time.
 */
final class Dense {
  private Dense() {}

  /** Lower factor of a symmetric positive definite matrix. */
  static double[][] cholesky(double[][] matrix) {
    int n = matrix.length;
    double[][] lower = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j <= i; j++) {
        double sum = matrix[i][j];
        for (int k = 0; k < j; k++) {
          sum -= lower[i][k] * lower[j][k];
        }
        lower[i][j] = i == j ? Math.sqrt(sum) : sum / lower[j][j];
      }
    }
    return lower;
  }

  /** Solves L X = B for a lower factor L and as many right sides as rows of B are long, in B. */
  static void lowerSolve(double[][] lower, double[][] right) {
    for (int i = 0; i < right.length; i++) {
      double[] row = right[i];
      for (int k = 0; k < i; k++) {
        add(row, -lower[i][k], right[k]);
      }
      double by = 1 / lower[i][i];
      for (int c = 0; c < row.length; c++) {
        row[c] *= by;
      }
    }
  }

  /** Solves Lᵀ x = b, in b. */
  static void upperSolve(double[][] lower, double[] right) {
    for (int i = right.length - 1; i >= 0; i--) {
      right[i] /= lower[i][i];
      for (int k = 0; k < i; k++) {
        right[k] -= lower[i][k] * right[i];
      }
    }
  }

  /** Adds so many times a row to another. */
  static void add(double[] row, double times, double[] other) {
    for (int c = 0; c < row.length; c++) {
      row[c] += times * other[c];
    }
  }

  /**
   * Factors a symmetric matrix into L D Lᵀ with ones on the diagonal of L, in its lower half; what
   * comes out is not finite where that cannot be.
   */
  static void factor(double[][] matrix) {
    int n = matrix.length;
    double[] column = new double[n];
    for (int c = 0; c < n; c++) {
      double pivot = matrix[c][c];
      for (int r = c + 1; r < n; r++) {
        column[r] = matrix[r][c];
      }
      for (int r = c + 1; r < n; r++) {
        double[] row = matrix[r];
        double times = row[c] / pivot;
        row[c] = times;
        for (int k = c + 1; k <= r; k++) {
          row[k] -= times * column[k];
        }
      }
    }
  }

  /** Solves L D Lᵀ x = b for a matrix made by {@link #factor}, in b. */
  static void solve(double[][] factored, double[] right) {
    int n = right.length;
    for (int r = 0; r < n; r++) {
      double[] row = factored[r];
      double sum = right[r];
      for (int k = 0; k < r; k++) {
        sum -= row[k] * right[k];
      }
      right[r] = sum;
    }
    for (int r = 0; r < n; r++) {
      right[r] /= factored[r][r];
    }
    for (int r = n - 1; r > 0; r--) {
      double[] row = factored[r];
      double x = right[r];
      for (int k = 0; k < r; k++) {
        right[k] -= row[k] * x;
      }
    }
  }
}
