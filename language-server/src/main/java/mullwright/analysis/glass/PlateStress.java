package mullwright.analysis.glass;

import java.util.Arrays;

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
    int count = across.count();
    double[] wave = new double[PlateBasis.SHORT_WAVES];
    double[] force = new double[PlateBasis.SHORT_FORCES];
    double[] curveLong = new double[count];
    double[] curveShort = new double[count];
    double[] turn = new double[count];
    double[] pullLong = new double[count];
    double[] pullShort = new double[count];
    double[] slide = new double[count];
    for (int i = 0; i < along.count(); i++) {
      line(2, along.waves(), i, state.waves(), wave, 0, across.waves(), curveLong);
      line(0, along.waves(), i, state.waves(), wave, 2, across.waves(), curveShort);
      line(1, along.waves(), i, state.waves(), wave, 1, across.waves(), turn);
      line(0, along.forces(), i, state.forces(), force, 2, across.forces(), pullLong);
      line(2, along.forces(), i, state.forces(), force, 0, across.forces(), pullShort);
      line(1, along.forces(), i, state.forces(), force, 1, across.forces(), slide);
      for (int j = 0; j < count; j++) {
        double bentLong = curveLong[j] / ratio;
        double bentShort = curveShort[j] * ratio;
        double stressLong = -bend * (bentLong + poisson * bentShort) + 4 * ratio * pullLong[j];
        double stressShort = -bend * (poisson * bentLong + bentShort) + 4 / ratio * pullShort[j];
        double shear = -twist * turn[j] - 4 * slide[j];
        double mean = (stressLong + stressShort) / 2;
        double half = (stressLong - stressShort) / 2;
        double radius = Math.sqrt(half * half + shear * shear);
        visitor.at(i, j, mean + radius, mean - radius);
      }
    }
  }

  /** A derivative along one line across the plate, at each place of it. */
  private static void line(
      int derivativeAlong,
      Shapes along,
      int place,
      double[] coefficients,
      double[] partial,
      int derivativeAcross,
      Shapes across,
      double[] into) {
    Arrays.fill(partial, 0);
    int width = partial.length;
    for (int m = 0; m < along.terms(); m++) {
      double value = along.at(derivativeAlong, m, place);
      for (int n = 0; n < width; n++) {
        partial[n] += value * coefficients[m * width + n];
      }
    }
    Arrays.fill(into, 0);
    for (int n = 0; n < width; n++) {
      Dense.add(into, partial[n], across.values()[derivativeAcross][n]);
    }
  }
}
