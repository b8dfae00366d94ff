package mullwright.analysis.glass;

import java.util.Arrays;

/**
 * Couples each stress function with pairs of deflections: C_i(u,v) = ∫ψ_i(u,xx v,yy + u,yy v,xx − 2
 * u,xy v,xy) over the unit quarter; both sides' scales cancel in it.
 *
 * <p>Every shape is one function along the long side times one along the short side, so C is a sum
 * of three such products: sums over the short side are made first, which takes a fifth of the work
 * of the whole tensor and none of its room.
 */
final class PlateCoupling {
  private static final PlateCoupling FULL = new PlateCoupling(PlateBasis.full());
  private static final PlateCoupling COARSE = new PlateCoupling(PlateBasis.coarse());

  /** Products in C. */
  private static final int PARTS = 3;

  private final int longWaves;
  private final int shortWaves;
  private final int longForces;
  private final int shortForces;

  /** By stress function and cosine along the long side: by the other cosine and product. */
  private final double[][] alongside;

  /** By product and other cosine along the short side: by stress function and cosine there. */
  private final double[][] across;

  /** By stress function along the short side and product: by both cosines there. */
  private final double[][] blocks;

  private PlateCoupling(PlateBasis basis) {
    longWaves = basis.longWaves();
    shortWaves = basis.shortWaves();
    longForces = basis.longForces();
    shortForces = basis.shortForces();
    alongside = new double[longForces * longWaves][longWaves * PARTS];
    for (int i = 0; i < longForces; i++) {
      for (int k = 0; k < longWaves; k++) {
        double[] row = alongside[i * longWaves + k];
        for (int l = 0; l < longWaves; l++) {
          row[l * PARTS] = PlateBasis.bent(i, k, l);
          row[l * PARTS + 1] = PlateBasis.bent(i, l, k);
          row[l * PARTS + 2] = -2 * PlateBasis.turned(i, k, l);
        }
      }
    }
    across = new double[PARTS * shortWaves][shortForces * shortWaves];
    blocks = new double[shortForces * PARTS][shortWaves * shortWaves];
    for (int i = 0; i < shortForces; i++) {
      for (int k = 0; k < shortWaves; k++) {
        for (int l = 0; l < shortWaves; l++) {
          double[] products = {
            PlateBasis.bent(i, l, k), PlateBasis.bent(i, k, l), PlateBasis.turned(i, k, l)
          };
          for (int part = 0; part < PARTS; part++) {
            across[part * shortWaves + l][i * shortWaves + k] = products[part];
            blocks[i * PARTS + part][k * shortWaves + l] = products[part];
          }
        }
      }
    }
  }

  /** That of a basis. */
  static PlateCoupling of(PlateBasis basis) {
    return basis == PlateBasis.full() ? FULL : COARSE;
  }

  /** C_i(W, u_k) for a deflection W, by stress function i and deflection shape k. */
  double[][] with(double[] waves) {
    int width = shortForces * shortWaves;
    double[][] summed = new double[longWaves * PARTS][width];
    for (int l = 0; l < longWaves; l++) {
      for (int part = 0; part < PARTS; part++) {
        for (int s = 0; s < shortWaves; s++) {
          double wave = waves[l * shortWaves + s];
          Dense.add(summed[l * PARTS + part], wave, across[part * shortWaves + s]);
        }
      }
    }
    double[][] coupled = new double[longForces * shortForces][longWaves * shortWaves];
    double[] line = new double[width];
    for (int i = 0; i < longForces; i++) {
      for (int k = 0; k < longWaves; k++) {
        Arrays.fill(line, 0);
        double[] row = alongside[i * longWaves + k];
        for (int p = 0; p < row.length; p++) {
          Dense.add(line, row[p], summed[p]);
        }
        for (int j = 0; j < shortForces; j++) {
          System.arraycopy(
              line, j * shortWaves, coupled[i * shortForces + j], k * shortWaves, shortWaves);
        }
      }
    }
    return coupled;
  }

  /** Takes Σ_i F_i C_i(u_k, u_l) off the lower half of a matrix, for stress coefficients F. */
  void takeOff(double[] forces, double[][] matrix) {
    double[] block = new double[shortWaves * shortWaves];
    for (int k = 0; k < longWaves; k++) {
      for (int l = 0; l <= k; l++) {
        Arrays.fill(block, 0);
        for (int j = 0; j < shortForces; j++) {
          for (int part = 0; part < PARTS; part++) {
            double sum = 0;
            for (int i = 0; i < longForces; i++) {
              sum += forces[i * shortForces + j] * alongside[i * longWaves + k][l * PARTS + part];
            }
            Dense.add(block, sum, blocks[j * PARTS + part]);
          }
        }
        for (int s = 0; s < shortWaves; s++) {
          double[] row = matrix[k * shortWaves + s];
          for (int r = 0; r < shortWaves; r++) {
            row[l * shortWaves + r] -= block[s * shortWaves + r];
          }
        }
      }
    }
  }
}
