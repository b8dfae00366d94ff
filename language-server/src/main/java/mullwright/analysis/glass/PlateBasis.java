package mullwright.analysis.glass;

/**
 * The fixed integrals of the spectral plate solution, which no size, load or material changes.
 *
 * <p>Deflection: cosines along the long side times cosines along the short one. Stress function:
 * flat-edged polynomials likewise. The {@link PlateCoupling} of a stress function with two
 * deflections is made of integrals along one side, which serve both sides and every aspect ratio.
 *
 * <p>The few first shapes of each kind make a coarse plate, solved in a fraction of the time, from
 * whose equilibrium that of the full one is near.
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

  private static final Tables TABLES = new Tables();
  private static final PlateBasis FULL =
      new PlateBasis(LONG_WAVES, SHORT_WAVES, LONG_FORCES, SHORT_FORCES);
  private static final PlateBasis COARSE = new PlateBasis(5, 4, 4, 3);

  private final int longWaves;
  private final int shortWaves;
  private final int longForces;
  private final int shortForces;

  private PlateBasis(int longWaves, int shortWaves, int longForces, int shortForces) {
    this.longWaves = longWaves;
    this.shortWaves = shortWaves;
    this.longForces = longForces;
    this.shortForces = shortForces;
  }

  /** All shapes: what results are computed with. */
  static PlateBasis full() {
    return FULL;
  }

  /** The few first shapes: what results are begun with. */
  static PlateBasis coarse() {
    return COARSE;
  }

  /** How many deflection shapes. */
  int waves() {
    return longWaves * shortWaves;
  }

  /** How many stress functions. */
  int forces() {
    return longForces * shortForces;
  }

  /** Which cosine along the long side a deflection shape has. */
  int longWave(int wave) {
    return wave / shortWaves;
  }

  /** Which cosine along the short side a deflection shape has. */
  int shortWave(int wave) {
    return wave % shortWaves;
  }

  /** Coefficients of these deflection shapes as coefficients of all. */
  double[] wavesOfAll(double[] coefficients) {
    double[] all = new double[WAVES];
    for (int k = 0; k < waves(); k++) {
      all[longWave(k) * SHORT_WAVES + shortWave(k)] = coefficients[k];
    }
    return all;
  }

  /** How many cosines along the long side. */
  int longWaves() {
    return longWaves;
  }

  /** How many cosines along the short side. */
  int shortWaves() {
    return shortWaves;
  }

  /** How many polynomials along the long side. */
  int longForces() {
    return longForces;
  }

  /** How many polynomials along the short side. */
  int shortForces() {
    return shortForces;
  }

  /** ∫ψ_i u″_k u_l along a side, by stress function and the two cosines. */
  static double bent(int force, int wave, int other) {
    return TABLES.bent[force][wave][other];
  }

  /** ∫ψ_i u′_k u′_l along a side, by stress function and the two cosines. */
  static double turned(int force, int wave, int other) {
    return TABLES.turned[force][wave][other];
  }

  /**
   * The matrix of ∫∇²ψ_i ∇²ψ_j in coordinates scaled to the given aspect ratio (long over short).
   */
  double[][] forceStiffness(double ratio) {
    double[][][] gram = TABLES.grams;
    int forces = forces();
    double[][] matrix = new double[forces][forces];
    double square = ratio * ratio;
    for (int i = 0; i < forces; i++) {
      int il = i / shortForces;
      int is = i % shortForces;
      for (int j = 0; j <= i; j++) {
        int jl = j / shortForces;
        int js = j % shortForces;
        matrix[i][j] =
            gram[2][il][jl] * gram[0][is][js] / square
                + 2 * gram[1][il][jl] * gram[1][is][js]
                + square * gram[0][il][jl] * gram[2][is][js];
        matrix[j][i] = matrix[i][j];
      }
    }
    return matrix;
  }

  /** Integrals along one side; along the short one stand the first of the same shapes. */
  private static final class Tables {
    private final double[][][] grams;

    /** With second derivative and value of the two waves. */
    private final double[][][] bent;

    /** With the slopes of both. */
    private final double[][][] turned;

    Tables() {
      Shapes waves = Shapes.cosines(LONG_WAVES, RULE.points());
      Shapes forces = Shapes.flatEdged(LONG_FORCES, RULE.points());
      grams = grams(forces);
      bent = triple(forces, waves, 2, 0);
      turned = triple(forces, waves, 1, 1);
    }
  }

  private static double[][][] grams(Shapes shapes) {
    int terms = shapes.terms();
    double[][][] gram = new double[3][terms][terms];
    for (int d = 0; d < 3; d++) {
      double[][] values = shapes.values()[d];
      for (int i = 0; i < terms; i++) {
        double[] weighted = product(RULE.weights(), values[i]);
        for (int j = 0; j <= i; j++) {
          gram[d][i][j] = dot(weighted, values[j]);
          gram[d][j][i] = gram[d][i][j];
        }
      }
    }
    return gram;
  }

  /** ∫ force × (a derivative of one wave) × (a derivative of another). */
  private static double[][][] triple(Shapes force, Shapes wave, int first, int second) {
    int terms = wave.terms();
    double[][][] integral = new double[force.terms()][terms][terms];
    for (int i = 0; i < force.terms(); i++) {
      double[] weighted = product(RULE.weights(), force.values()[0][i]);
      for (int k = 0; k < terms; k++) {
        double[] both = product(weighted, wave.values()[first][k]);
        // with the same derivative of both the order does not matter
        for (int l = first == second ? k : 0; l < terms; l++) {
          integral[i][k][l] = dot(both, wave.values()[second][l]);
          if (first == second) {
            integral[i][l][k] = integral[i][k][l];
          }
        }
      }
    }
    return integral;
  }

  private static double[] product(double[] one, double[] other) {
    double[] product = new double[one.length];
    for (int p = 0; p < one.length; p++) {
      product[p] = one[p] * other[p];
    }
    return product;
  }

  private static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int p = 0; p < one.length; p++) {
      sum += one[p] * other[p];
    }
    return sum;
  }
}
