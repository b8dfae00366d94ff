package mullwright.analysis.beam;

/**
 * State at the start of every piece, and at the end of the last: deflection, slope, moment, shear,
 * line load and its gradient.
 */
final class PieceStates {
  private static final int WIDTH = 6;

  private final double[] values;

  PieceStates(int pieces) {
    values = new double[WIDTH * (pieces + 1)];
  }

  private PieceStates(double[] values) {
    this.values = values;
  }

  void begin(int piece, double deflection, double slope, double moment, double shear) {
    int at = WIDTH * piece;
    values[at] = deflection;
    values[at + 1] = slope;
    values[at + 2] = moment;
    values[at + 3] = shear;
  }

  /** Carries the state over the pieces of one element and returns the shear at its end. */
  double carry(BeamPieces pieces, PieceLoads loads, int first, int end) {
    double shearEnd = 0;
    for (int piece = first; piece < end; piece++) {
      values[WIDTH * piece + 4] = loads.intensity[piece];
      values[WIDTH * piece + 5] = loads.gradient[piece];
      Piece whole = piece(pieces, piece);
      double length = pieces.length(piece);
      shearEnd = whole.shear(length);
      int next = piece + 1;
      // The next element begins with its own solved state; only the run's end takes this one.
      boolean inside = next < end;
      if (inside || next == pieces.size()) {
        begin(
            next,
            whole.deflection(length),
            whole.slope(length),
            whole.moment(length) + (inside ? loads.couple[next] : 0),
            shearEnd - (inside ? loads.force[next] : 0));
      }
    }
    return shearEnd;
  }

  Piece piece(BeamPieces pieces, int piece) {
    int at = WIDTH * piece;
    return new Piece(
        pieces.rigidity(piece),
        values[at],
        values[at + 1],
        values[at + 2],
        values[at + 3],
        values[at + 4],
        values[at + 5]);
  }

  PieceStates times(double factor) {
    double[] scaled = new double[values.length];
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] = factor * values[i];
    }
    return new PieceStates(scaled);
  }

  PieceStates plus(PieceStates other) {
    double[] sum = new double[values.length];
    for (int i = 0; i < sum.length; i++) {
      sum[i] = values[i] + other.values[i];
    }
    return new PieceStates(sum);
  }

  boolean finite() {
    for (double value : values) {
      if (!Double.isFinite(value)) {
        return false;
      }
    }
    return true;
  }
}
