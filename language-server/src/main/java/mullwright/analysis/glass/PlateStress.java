package mullwright.analysis.glass;

/**
 * Principal stresses on the tension face of a plate, over places of one quarter.
 *
 * <p>Stresses are made dimensionless as σ·ab/(E t²). Places run from 0 at the centre to 1 at the
 * edge along the long and the short side.
 */
final class PlateStress {
  private final PlateState state;
  private final Table along;
  private final Table across;

  /** Shape functions tabulated along one side. */
  record Table(Shapes waves, Shapes forces, int count) {
    static Table along(double[] places) {
      return new Table(
          Shapes.cosines(PlateBasis.LONG_WAVES, places),
          Shapes.flatEdged(PlateBasis.LONG_FORCES, places),
          places.length);
    }

    static Table across(double[] places) {
      return new Table(
          Shapes.cosines(PlateBasis.SHORT_WAVES, places),
          Shapes.flatEdged(PlateBasis.SHORT_FORCES, places),
          places.length);
    }
  }

  /** Takes the principal stresses of one place. */
  interface Visitor {
    void at(int along, int across, double first, double second);
  }

  PlateStress(PlateState state, Table along, Table across) {
    this.state = state;
    this.along = along;
    this.across = across;
  }

  /** Visits every pair of places; first is the larger principal stress, tension positive. */
  void visit(Visitor visitor) {
    double ratio = state.ratio();
    double poisson = state.poisson();
    double bend = 2 / (1 - poisson * poisson);
    double twist = 2 / (1 + poisson);
    double[][] wave = new double[3][PlateBasis.SHORT_WAVES];
    double[][] force = new double[3][PlateBasis.SHORT_FORCES];
    for (int i = 0; i < along.count(); i++) {
      partial(along.waves(), i, state.waves(), wave);
      partial(along.forces(), i, state.forces(), force);
      for (int j = 0; j < across.count(); j++) {
        double curveLong = sum(wave[2], across.waves(), 0, j) / ratio;
        double curveShort = sum(wave[0], across.waves(), 2, j) * ratio;
        double turn = sum(wave[1], across.waves(), 1, j);
        double stressLong =
            -bend * (curveLong + poisson * curveShort)
                + 4 * ratio * sum(force[0], across.forces(), 2, j);
        double stressShort =
            -bend * (poisson * curveLong + curveShort)
                + 4 / ratio * sum(force[2], across.forces(), 0, j);
        double shear = -twist * turn - 4 * sum(force[1], across.forces(), 1, j);
        double mean = (stressLong + stressShort) / 2;
        double half = (stressLong - stressShort) / 2;
        double radius = Math.sqrt(half * half + shear * shear);
        visitor.at(i, j, mean + radius, mean - radius);
      }
    }
  }

  private static void partial(Shapes shapes, int place, double[] coefficients, double[][] into) {
    int width = into[0].length;
    for (int d = 0; d < 3; d++) {
      for (int n = 0; n < width; n++) {
        double sum = 0;
        for (int m = 0; m < shapes.terms(); m++) {
          sum += shapes.at(d, m, place) * coefficients[m * width + n];
        }
        into[d][n] = sum;
      }
    }
  }

  private static double sum(double[] partial, Shapes shapes, int derivative, int place) {
    double sum = 0;
    for (int n = 0; n < partial.length; n++) {
      sum += partial[n] * shapes.at(derivative, n, place);
    }
    return sum;
  }
}
