package mullwright.analysis.glass;

import java.util.Optional;

/**
 * The nonlinear equations of a thin plate of one shape, solved for a load by Newton's method.
 *
 * <p>With the stress function eliminated, the deflection coefficients W obey K W + ½ Σ (A⁻¹c)·B·W =
 * q̂F/16, where c = W·B·W; K is the bending stiffness and A the stiffness of the stress function.
 */
final class PlateEquations {
  private static final int N = PlateBasis.WAVES;
  private static final int M = PlateBasis.FORCES;
  private static final int STEPS = 60;

  /** Loads up to here are reached from the simple guess at once. */
  private static final double EASY = 150;

  /** Load ratio of one stage to the next. */
  private static final double STAGE = 3;

  /** Deflection grows about so with the load once membrane forces carry most of it. */
  private static final double GROWTH = 0.4;

  /**
   * Change of a coefficient, over the largest coefficient, that ends the iteration. Newton's method
   * squares the error, so what remains after such a step is far smaller.
   */
  private static final double CONVERGED = 1e-5;

  private final double ratio;
  private final double poisson;
  private final double[] bending = new double[N];
  private final double[] load = new double[N];
  private final double[][] factor;

  PlateEquations(double ratio, double poisson) {
    this.ratio = ratio;
    this.poisson = poisson;
    for (int k = 0; k < N; k++) {
      double waveLong = Shapes.wave(k / PlateBasis.SHORT_WAVES);
      double waveShort = Shapes.wave(k % PlateBasis.SHORT_WAVES);
      double curvature = waveLong * waveLong / ratio + waveShort * waveShort * ratio;
      bending[k] = curvature * curvature / (4 * 12 * (1 - poisson * poisson));
      int sign = (k / PlateBasis.SHORT_WAVES + k % PlateBasis.SHORT_WAVES) % 2 == 0 ? 1 : -1;
      load[k] = sign / (16 * waveLong * waveShort);
    }
    factor = Dense.cholesky(PlateBasis.forceStiffness(ratio));
  }

  /**
   * Equilibrium at load q̂; empty when Newton's method fails. A strong load is reached in stages
   * from the regime where the simple guess is near.
   */
  Optional<PlateState> solve(double q) {
    int stages = 0;
    double load = q;
    while (load > EASY) {
      load /= STAGE;
      stages++;
    }
    Optional<PlateState> state = solve(load, guess(load));
    for (int stage = stages - 1; stage >= 0 && state.isPresent(); stage--) {
      state = solveFrom(state.get(), q / StrictMath.pow(STAGE, stage));
    }
    return state;
  }

  /** The plate without membrane forces, which it approaches under ever smaller loads. */
  PlateState linear(double q) {
    double[] waves = new double[N];
    for (int k = 0; k < N; k++) {
      waves[k] = q * load[k] / bending[k];
    }
    return new PlateState(ratio, poisson, q, waves, new double[M]);
  }

  /** Equilibrium at load q̂, starting from another equilibrium. */
  Optional<PlateState> solveFrom(PlateState near, double q) {
    double stretch = StrictMath.pow(q / near.load(), GROWTH);
    double[] start = new double[N];
    for (int k = 0; k < N; k++) {
      start[k] = near.waves()[k] * stretch;
    }
    return solve(q, start);
  }

  /** The small-load shape, its height reduced as a single-degree-of-freedom plate would be. */
  private double[] guess(double q) {
    double[] shape = linear(q).waves();
    double work = 0;
    for (int k = 0; k < N; k++) {
      work += shape[k] * bending[k] * shape[k];
    }
    double[] c = times(coupled(shape), shape);
    double[] half = Dense.lowerSolve(factor, c);
    double stretch = 0;
    for (double h : half) {
      stretch += h * h;
    }
    double height = 1;
    for (int step = 0; step < 40; step++) {
      double residual = work * height + 0.5 * stretch * height * height * height - work;
      height -= residual / (work + 1.5 * stretch * height * height);
    }
    for (int k = 0; k < N; k++) {
      shape[k] *= height;
    }
    return shape;
  }

  private Optional<PlateState> solve(double q, double[] waves) {
    for (int step = 0; step < STEPS; step++) {
      double[][] g = coupled(waves);
      double[] forces = forces(g, waves);
      double[] change = change(q, waves, g, forces);
      double largest = 0;
      double size = 0;
      for (int k = 0; k < N; k++) {
        largest = Math.max(largest, Math.abs(change[k]));
        size = Math.max(size, Math.abs(waves[k]));
      }
      // A step longer than the shape itself would leave Newton's range: shorten it.
      double damp = largest > size ? size / largest : 1;
      for (int k = 0; k < N; k++) {
        waves[k] += damp * change[k];
      }
      if (!Double.isFinite(largest)) {
        return Optional.empty();
      }
      if (largest < CONVERGED * size) {
        return Optional.of(new PlateState(ratio, poisson, q, waves, forces(coupled(waves), waves)));
      }
    }
    return Optional.empty();
  }

  private double[] change(double q, double[] waves, double[][] g, double[] forces) {
    double[][] tangent = new double[N][N];
    double[] residual = new double[N];
    for (int k = 0; k < N; k++) {
      tangent[k][k] = bending[k];
      residual[k] = q * load[k] - bending[k] * waves[k];
    }
    double[][] columns = new double[N][];
    double[] column = new double[M];
    for (int k = 0; k < N; k++) {
      for (int i = 0; i < M; i++) {
        column[i] = g[i][k];
        residual[k] += forces[i] * g[i][k];
      }
      columns[k] = Dense.lowerSolve(factor, column);
    }
    for (int i = 0; i < M; i++) {
      double[] coupling = PlateBasis.coupling(i);
      double force = forces[i];
      for (int k = 0; k < N; k++) {
        double[] row = tangent[k];
        int base = k * N;
        for (int l = 0; l <= k; l++) {
          row[l] -= force * coupling[base + l];
        }
      }
    }
    for (int k = 0; k < N; k++) {
      for (int l = 0; l <= k; l++) {
        tangent[k][l] += dot(columns[k], columns[l]);
        tangent[l][k] = tangent[k][l];
      }
    }
    return Dense.solve(tangent, residual);
  }

  private double[] forces(double[][] g, double[] waves) {
    double[] forces = Dense.choleskySolve(factor, times(g, waves));
    for (int i = 0; i < M; i++) {
      forces[i] *= -0.5;
    }
    return forces;
  }

  private static double[][] coupled(double[] waves) {
    double[][] g = new double[M][N];
    for (int i = 0; i < M; i++) {
      double[] coupling = PlateBasis.coupling(i);
      for (int k = 0; k < N; k++) {
        double sum = 0;
        int base = k * N;
        for (int l = 0; l < N; l++) {
          sum += coupling[base + l] * waves[l];
        }
        g[i][k] = sum;
      }
    }
    return g;
  }

  private static double[] times(double[][] matrix, double[] vector) {
    double[] product = new double[matrix.length];
    for (int i = 0; i < matrix.length; i++) {
      product[i] = dot(matrix[i], vector);
    }
    return product;
  }

  private static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }
}
