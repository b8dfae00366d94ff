package mullwright.analysis.glass;

/**
 * The fixed integrals of the spectral plate solution, which no size, load or material changes.
 *
 * <p>Deflection: {@link #LONG_WAVES} × {@link #SHORT_WAVES} cosines. Stress function: {@link
 * #LONG_FORCES} × {@link #SHORT_FORCES} flat-edged polynomials. The tensor couples one stress
 * function with two deflections through ∫ψ(u,xx v,yy + u,yy v,xx − 2 u,xy v,xy) over the unit
 * quarter; both sides' scales cancel in it, so it serves every aspect ratio.
 */
final class PlateBasis {
  static final int LONG_WAVES = 8;
  static final int SHORT_WAVES = 6;
  static final int LONG_FORCES = 6;
  static final int SHORT_FORCES = 5;
  static final int WAVES = LONG_WAVES * SHORT_WAVES;
  static final int FORCES = LONG_FORCES * SHORT_FORCES;

  /** Enough for products of the two highest cosines with the highest polynomial. */
  private static final GaussRule RULE = GaussRule.of(32);

  private static final Shapes WAVE_LONG = Shapes.cosines(LONG_WAVES, RULE.points());
  private static final Shapes WAVE_SHORT = Shapes.cosines(SHORT_WAVES, RULE.points());
  private static final Shapes FORCE_LONG = Shapes.flatEdged(LONG_FORCES, RULE.points());
  private static final Shapes FORCE_SHORT = Shapes.flatEdged(SHORT_FORCES, RULE.points());

  private static final double[][] COUPLING = coupling();

  private PlateBasis() {}

  /** Coupling of one stress function with all pairs of deflections, row-major and symmetric. */
  static double[] coupling(int force) {
    return COUPLING[force];
  }

  /**
   * The matrix of ∫∇²ψ_i ∇²ψ_j in coordinates scaled to the given aspect ratio (long over short).
   */
  static double[][] forceStiffness(double ratio) {
    double[][][] along = grams(FORCE_LONG);
    double[][][] across = grams(FORCE_SHORT);
    double[][] matrix = new double[FORCES][FORCES];
    double square = ratio * ratio;
    for (int i = 0; i < FORCES; i++) {
      int il = i / SHORT_FORCES;
      int is = i % SHORT_FORCES;
      for (int j = 0; j < FORCES; j++) {
        int jl = j / SHORT_FORCES;
        int js = j % SHORT_FORCES;
        matrix[i][j] =
            along[2][il][jl] * across[0][is][js] / square
                + 2 * along[1][il][jl] * across[1][is][js]
                + square * along[0][il][jl] * across[2][is][js];
      }
    }
    return matrix;
  }

  private static double[][][] grams(Shapes shapes) {
    int terms = shapes.terms();
    double[][][] gram = new double[3][terms][terms];
    for (int d = 0; d < 3; d++) {
      for (int i = 0; i < terms; i++) {
        for (int j = 0; j < terms; j++) {
          double sum = 0;
          for (int p = 0; p < RULE.count(); p++) {
            sum += RULE.weights()[p] * shapes.at(d, i, p) * shapes.at(d, j, p);
          }
          gram[d][i][j] = sum;
        }
      }
    }
    return gram;
  }

  private static double[][] coupling() {
    double[][][] bentLong = triple(FORCE_LONG, WAVE_LONG, 2, 0);
    double[][][] turnedLong = triple(FORCE_LONG, WAVE_LONG, 1, 1);
    double[][][] bentShort = triple(FORCE_SHORT, WAVE_SHORT, 2, 0);
    double[][][] turnedShort = triple(FORCE_SHORT, WAVE_SHORT, 1, 1);
    double[][] coupling = new double[FORCES][WAVES * WAVES];
    for (int i = 0; i < FORCES; i++) {
      int il = i / SHORT_FORCES;
      int is = i % SHORT_FORCES;
      for (int k = 0; k < WAVES; k++) {
        int kl = k / SHORT_WAVES;
        int ks = k % SHORT_WAVES;
        for (int l = 0; l < WAVES; l++) {
          int ll = l / SHORT_WAVES;
          int ls = l % SHORT_WAVES;
          coupling[i][k * WAVES + l] =
              bentLong[il][kl][ll] * bentShort[is][ls][ks]
                  + bentLong[il][ll][kl] * bentShort[is][ks][ls]
                  - 2 * turnedLong[il][kl][ll] * turnedShort[is][ks][ls];
        }
      }
    }
    return coupling;
  }

  /** ∫ force × (first derivative of one wave) × (second derivative of another). */
  private static double[][][] triple(Shapes force, Shapes wave, int first, int second) {
    double[][][] integral = new double[force.terms()][wave.terms()][wave.terms()];
    for (int i = 0; i < force.terms(); i++) {
      for (int k = 0; k < wave.terms(); k++) {
        for (int l = 0; l < wave.terms(); l++) {
          double sum = 0;
          for (int p = 0; p < RULE.count(); p++) {
            sum +=
                RULE.weights()[p]
                    * force.at(0, i, p)
                    * wave.at(first, k, p)
                    * wave.at(second, l, p);
          }
          integral[i][k][l] = sum;
        }
      }
    }
    return integral;
  }
}
