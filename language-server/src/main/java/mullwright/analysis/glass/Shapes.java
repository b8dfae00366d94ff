package mullwright.analysis.glass;

/**
 * Shape functions along one side of a plate, with first and second derivatives, at given places.
 *
 * <p>The coordinate runs from 0 at the middle of the side to 1 at the edge; all shapes are even.
 *
 * @param values indexed by derivative (0 to 2), term, place
 */
record Shapes(double[][][] values) {

  /** Odd cosines cos((2k+1)πx/2): zero value and zero curvature at the edge (simple support). */
  static Shapes cosines(int terms, double[] places) {
    double[][][] values = new double[3][terms][places.length];
    for (int k = 0; k < terms; k++) {
      double wave = wave(k);
      for (int p = 0; p < places.length; p++) {
        double cos = StrictMath.cos(wave * places[p]);
        values[0][k][p] = cos;
        values[1][k][p] = -wave * StrictMath.sin(wave * places[p]);
        values[2][k][p] = -wave * wave * cos;
      }
    }
    return new Shapes(values);
  }

  /** The wave number (2k+1)π/2 of a cosine. */
  static double wave(int k) {
    return (2 * k + 1) * StrictMath.PI / 2;
  }

  /**
   * Even Legendre polynomials times (1−x²)²: zero value and slope at the edge, so that a stress
   * function made of them leaves the edge free of in-plane force.
   */
  static Shapes flatEdged(int terms, double[] places) {
    double[][][] values = new double[3][terms][places.length];
    int degrees = 2 * terms - 1;
    double[] value = new double[degrees + 1];
    double[] slope = new double[degrees + 1];
    double[] bend = new double[degrees + 1];
    for (int p = 0; p < places.length; p++) {
      double x = places[p];
      value[0] = 1;
      value[1] = x;
      slope[1] = 1;
      for (int n = 1; n < degrees; n++) {
        value[n + 1] = ((2 * n + 1) * x * value[n] - n * value[n - 1]) / (n + 1);
        slope[n + 1] = slope[n - 1] + (2 * n + 1) * value[n];
        bend[n + 1] = bend[n - 1] + (2 * n + 1) * slope[n];
      }
      double rim = 1 - x * x;
      double edge = rim * rim;
      double edgeSlope = -4 * x * rim;
      double edgeBend = 12 * x * x - 4;
      for (int k = 0; k < terms; k++) {
        int n = 2 * k;
        values[0][k][p] = edge * value[n];
        values[1][k][p] = edgeSlope * value[n] + edge * slope[n];
        values[2][k][p] = edgeBend * value[n] + 2 * edgeSlope * slope[n] + edge * bend[n];
      }
    }
    return new Shapes(values);
  }

  int terms() {
    return values[0].length;
  }

  double at(int derivative, int term, int place) {
    return values[derivative][term][place];
  }
}
