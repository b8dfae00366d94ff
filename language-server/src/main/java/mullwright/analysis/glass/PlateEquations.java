package mullwright.analysis.glass;

import java.util.Optional;

/**
 * The nonlinear equations of a thin plate of one shape, solved for a load by Newton's method.
 *
 * <p>With the stress function eliminated, the deflection coefficients W obey K W + ½ Σ (A⁻¹c)·B·W =
 * q̂F/16, where c = W·B·W; K is the bending stiffness and A the stiffness of the stress function.
 *
 * <p>The equilibrium of the few first shapes, reached in stages, is where that of all shapes is
 * sought from: it is near, and costs little.
 */
final class PlateEquations {
  private static final int STEPS = 60;

  /** Loads up to here are reached from the simple guess at once. */
  private static final double EASY = 150;

  /** Load ratio of one stage to the next. */
  private static final double STAGE = 3;

  /** Deflection grows about so with the load once membrane forces carry most of it. */
  private static final double GROWTH = 0.4;

  /** What may remain to be changed of a coefficient, over the largest coefficient. */
  private static final double CONVERGED = 1e-7;

  /** A step longer than this share of the one before asks for a new tangent. */
  private static final double SLOW = 0.2;

  private final PlateBasis basis;
  private final double ratio;
  private final double poisson;
  private final int n;
  private final int m;
  private final double[] bending;
  private final double[] load;
  private final double[][] factor;
  private final PlateCoupling coupling;

  /** The tangent used last, factored; it serves as long as steps shrink fast. */
  private double[][] tangent;

  PlateEquations(double ratio, double poisson) {
    this(PlateBasis.full(), ratio, poisson);
  }

  private PlateEquations(PlateBasis basis, double ratio, double poisson) {
    this.basis = basis;
    this.ratio = ratio;
    this.poisson = poisson;
    this.n = basis.waves();
    this.m = basis.forces();
    this.bending = new double[n];
    this.load = new double[n];
    for (int k = 0; k < n; k++) {
      double waveLong = Shapes.wave(basis.longWave(k));
      double waveShort = Shapes.wave(basis.shortWave(k));
      double curvature = waveLong * waveLong / ratio + waveShort * waveShort * ratio;
      bending[k] = curvature * curvature / (4 * 12 * (1 - poisson * poisson));
      int sign = (basis.longWave(k) + basis.shortWave(k)) % 2 == 0 ? 1 : -1;
      load[k] = sign / (16 * waveLong * waveShort);
    }
    this.factor = Dense.cholesky(basis.forceStiffness(ratio));
    this.coupling = PlateCoupling.of(basis);
  }

  /** Equilibrium at load q̂; empty when Newton's method fails. */
  Optional<PlateState> solve(double q) {
    PlateBasis few = PlateBasis.coarse();
    Optional<double[]> start = new PlateEquations(few, ratio, poisson).staged(q, SLOW);
    Optional<double[]> found =
        start.isPresent() ? newton(q, few.wavesOfAll(start.get()), SLOW) : Optional.empty();
    return state(q, found.isPresent() ? found : staged(q, 0));
  }

  /** A strong load is reached in stages from the regime where the simple guess is near. */
  private Optional<double[]> staged(double q, double slow) {
    int stages = 0;
    double first = q;
    while (first > EASY) {
      first /= STAGE;
      stages++;
    }
    Optional<double[]> waves = newton(first, guess(first), slow);
    for (int stage = stages - 1; stage >= 0 && waves.isPresent(); stage--) {
      double next = q / StrictMath.pow(STAGE, stage);
      tangent = null;
      waves = newton(next, stretched(waves.get(), StrictMath.pow(STAGE, GROWTH)), slow);
    }
    return waves;
  }

  private Optional<PlateState> state(double q, Optional<double[]> found) {
    if (found.isEmpty()) {
      return Optional.empty();
    }
    double[] waves = found.get();
    double[] forces = new double[m];
    double[][] coupled = coupling.with(waves);
    Dense.lowerSolve(factor, coupled);
    for (int i = 0; i < m; i++) {
      forces[i] = -0.5 * dot(coupled[i], waves);
    }
    Dense.upperSolve(factor, forces);
    return Optional.of(new PlateState(ratio, poisson, q, waves, forces));
  }

  /** The plate without membrane forces, which it approaches under ever smaller loads. */
  PlateState linear(double q) {
    return new PlateState(ratio, poisson, q, small(q), new double[m]);
  }

  private double[] small(double q) {
    double[] waves = new double[n];
    for (int k = 0; k < n; k++) {
      waves[k] = q * load[k] / bending[k];
    }
    return waves;
  }

  /** Equilibrium at load q̂, starting from another equilibrium. */
  Optional<PlateState> solveFrom(PlateState near, double q) {
    double stretch = StrictMath.pow(q / near.load(), GROWTH);
    return state(q, newton(q, stretched(near.waves(), stretch), SLOW));
  }

  private static double[] stretched(double[] waves, double by) {
    double[] stretched = waves.clone();
    for (int k = 0; k < stretched.length; k++) {
      stretched[k] *= by;
    }
    return stretched;
  }

  /** The small-load shape, its height reduced as a single-degree-of-freedom plate would be. */
  private double[] guess(double q) {
    double[] shape = small(q);
    double work = 0;
    for (int k = 0; k < n; k++) {
      work += shape[k] * bending[k] * shape[k];
    }
    double stretch = 0;
    double[][] coupled = coupling.with(shape);
    Dense.lowerSolve(factor, coupled);
    for (double[] row : coupled) {
      double h = dot(row, shape);
      stretch += h * h;
    }
    double height = 1;
    for (int step = 0; step < 40; step++) {
      double residual = work * height + 0.5 * stretch * height * height * height - work;
      double change = residual / (work + 1.5 * stretch * height * height);
      height -= change;
      if (Math.abs(change) < 1e-6) {
        break;
      }
    }
    return stretched(shape, height);
  }

  /**
   * Coefficients of the equilibrium at load q̂ by Newton's method, in place of the start. A tangent
   * is used again while each step is shorter by the factor {@code slow}: most of the work is in
   * making one.
   */
  private Optional<double[]> newton(double q, double[] waves, double slow) {
    double before = Double.NaN;
    for (int step = 0; step < STEPS; step++) {
      boolean fresh = tangent == null;
      double[] change = change(q, waves);
      double largest = 0;
      double size = 0;
      for (int k = 0; k < n; k++) {
        largest = Math.max(largest, Math.abs(change[k]));
        size = Math.max(size, Math.abs(waves[k]));
      }
      if (!Double.isFinite(largest)) {
        tangent = null;
        return Optional.empty();
      }
      // A step longer than the shape itself would leave Newton's range: shorten it.
      double damp = largest > size ? size / largest : 1;
      Dense.add(waves, damp, change);
      double shrinks = largest / (step == 0 || fresh ? size : before);
      // of an old tangent the first step does not tell how fast it shrinks
      if (largest * (step == 0 && !fresh ? 1 : shrinks) < CONVERGED * size) {
        return Optional.of(waves);
      }
      if (shrinks > slow) {
        tangent = null;
      }
      before = largest;
    }
    return Optional.empty();
  }

  private double[] change(double q, double[] waves) {
    double[] residual = new double[n];
    for (int k = 0; k < n; k++) {
      residual[k] = q * load[k] - bending[k] * waves[k];
    }
    // with L Lᵀ = A the rows of L⁻¹B·W serve the forces and the tangent
    double[][] half = coupling.with(waves);
    Dense.lowerSolve(factor, half);
    double[] forces = new double[m];
    for (int i = 0; i < m; i++) {
      forces[i] = -0.5 * dot(half[i], waves);
      Dense.add(residual, forces[i], half[i]);
    }
    if (tangent == null) {
      Dense.upperSolve(factor, forces);
      tangent = tangent(half, forces);
    }
    Dense.solve(tangent, residual);
    return residual;
  }

  private double[][] tangent(double[][] half, double[] forces) {
    double[][] made = new double[n][n];
    for (double[] row : half) {
      for (int k = 0; k < n; k++) {
        double[] into = made[k];
        double times = row[k];
        for (int l = 0; l <= k; l++) {
          into[l] += times * row[l];
        }
      }
    }
    coupling.takeOff(forces, made);
    for (int k = 0; k < n; k++) {
      made[k][k] += bending[k];
    }
    Dense.factor(made);
    return made;
  }

  private static double dot(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }
}
