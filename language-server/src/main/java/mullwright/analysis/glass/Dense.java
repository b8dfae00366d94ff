package mullwright.analysis.glass;

/** Solves the small dense linear systems of {@link PlateEquations}. */
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

  /** Solves L x = b for a lower factor L. */
  static double[] lowerSolve(double[][] lower, double[] right) {
    int n = right.length;
    double[] x = new double[n];
    for (int i = 0; i < n; i++) {
      double sum = right[i];
      for (int k = 0; k < i; k++) {
        sum -= lower[i][k] * x[k];
      }
      x[i] = sum / lower[i][i];
    }
    return x;
  }

  /** Solves L Lᵀ x = b. */
  static double[] choleskySolve(double[][] lower, double[] right) {
    double[] x = lowerSolve(lower, right);
    for (int i = x.length - 1; i >= 0; i--) {
      double sum = x[i];
      for (int k = i + 1; k < x.length; k++) {
        sum -= lower[k][i] * x[k];
      }
      x[i] = sum / lower[i][i];
    }
    return x;
  }

  /** Solves a square system by elimination with row exchanges; overwrites both arguments. */
  static double[] solve(double[][] matrix, double[] right) {
    int n = right.length;
    for (int c = 0; c < n; c++) {
      int pivot = c;
      for (int r = c + 1; r < n; r++) {
        if (Math.abs(matrix[r][c]) > Math.abs(matrix[pivot][c])) {
          pivot = r;
        }
      }
      double[] row = matrix[pivot];
      matrix[pivot] = matrix[c];
      matrix[c] = row;
      double value = right[pivot];
      right[pivot] = right[c];
      right[c] = value;
      for (int r = c + 1; r < n; r++) {
        double times = matrix[r][c] / row[c];
        if (times != 0) {
          double[] other = matrix[r];
          for (int k = c; k < n; k++) {
            other[k] -= times * row[k];
          }
          right[r] -= times * value;
        }
      }
    }
    for (int r = n - 1; r >= 0; r--) {
      double sum = right[r];
      for (int k = r + 1; k < n; k++) {
        sum -= matrix[r][k] * right[k];
      }
      right[r] = sum / matrix[r][r];
    }
    return right;
  }
}
