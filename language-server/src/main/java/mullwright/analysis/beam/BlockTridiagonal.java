package mullwright.analysis.beam;

/**
 * Symmetric positive definite system of 2 × 2 blocks, each tied to its two neighbours only.
 *
 * <p>Factored once, then solved for any number of right-hand sides in time linear in the number of
 * blocks. Positive definite, so no pivoting: the order of work never depends on the numbers.
 */
final class BlockTridiagonal {
  /** A diagonal block this near to singular has lost all its digits. */
  private static final double SINGULAR = 1e-13;

  private final int size;

  // Diagonal blocks [a b; b c]; after factoring, the inverses of the eliminated ones.
  private final double[] a;
  private final double[] b;
  private final double[] c;

  // Block of row i and column i + 1; after factoring, the eliminated row's share of it.
  private final double[] e;
  private final double[] f;
  private final double[] g;
  private final double[] h;

  BlockTridiagonal(int size) {
    this.size = size;
    a = new double[size];
    b = new double[size];
    c = new double[size];
    e = new double[size];
    f = new double[size];
    g = new double[size];
    h = new double[size];
  }

  void addDiagonal(int i, double aa, double ab, double bb) {
    a[i] += aa;
    b[i] += ab;
    c[i] += bb;
  }

  void setCoupling(int i, double ee, double ff, double gg, double hh) {
    e[i] = ee;
    f[i] = ff;
    g[i] = gg;
    h[i] = hh;
  }

  /** Takes the first unknown of block i out of the system: it is nil. */
  void hold(int i) {
    a[i] = 1;
    b[i] = 0;
    e[i] = 0;
    f[i] = 0;
    if (i > 0) {
      e[i - 1] = 0;
      g[i - 1] = 0;
    }
  }

  /** Factors in place; false when a block has no digits left to divide by. */
  boolean factor() {
    for (int i = 0; i < size; i++) {
      double det = a[i] * c[i] - b[i] * b[i];
      if (!(det > SINGULAR * a[i] * c[i]) || !(a[i] > 0)) {
        return false;
      }
      double p = c[i] / det;
      double q = -b[i] / det;
      double r = a[i] / det;
      a[i] = p;
      b[i] = q;
      c[i] = r;
      if (i + 1 < size) {
        double e0 = e[i];
        double f0 = f[i];
        double g0 = g[i];
        double h0 = h[i];
        e[i] = p * e0 + q * g0;
        f[i] = p * f0 + q * h0;
        g[i] = q * e0 + r * g0;
        h[i] = q * f0 + r * h0;
        a[i + 1] -= e0 * e[i] + g0 * g[i];
        b[i + 1] -= e0 * f[i] + g0 * h[i];
        c[i + 1] -= f0 * f[i] + h0 * h[i];
      }
    }
    return true;
  }

  /** Replaces right-hand sides by unknowns; x and y are the first and second of each block. */
  void solve(double[] x, double[] y) {
    for (int i = 0; i + 1 < size; i++) {
      x[i + 1] -= e[i] * x[i] + g[i] * y[i];
      y[i + 1] -= f[i] * x[i] + h[i] * y[i];
    }
    for (int i = size - 1; i >= 0; i--) {
      double xi = a[i] * x[i] + b[i] * y[i];
      double yi = b[i] * x[i] + c[i] * y[i];
      if (i + 1 < size) {
        xi -= e[i] * x[i + 1] + f[i] * y[i + 1];
        yi -= g[i] * x[i + 1] + h[i] * y[i + 1];
      }
      x[i] = xi;
      y[i] = yi;
    }
  }
}
