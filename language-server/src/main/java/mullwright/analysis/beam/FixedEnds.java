package mullwright.analysis.beam;

/**
 * End forces each element would have with both ends held fast (the right one free to turn at a
 * hinge), exact for any mix of loads on it.
 *
 * <p>The loads are carried along the element from a start at rest; the two end forces that bring
 * the far end back to rest follow in closed form.
 */
final class FixedEnds {
  final double[] shearStart;
  final double[] momentStart;
  final double[] shearEnd;
  final double[] momentEnd;

  FixedEnds(BeamPieces pieces, PieceLoads loads) {
    BeamMesh mesh = pieces.mesh();
    shearStart = new double[mesh.elements()];
    momentStart = new double[mesh.elements()];
    shearEnd = new double[mesh.elements()];
    momentEnd = new double[mesh.elements()];
    for (int i = 0; i < mesh.elements(); i++) {
      fix(i, pieces, loads);
    }
  }

  private void fix(int i, BeamPieces pieces, PieceLoads loads) {
    // Deflection and slope times EI, so that the rigidity drops out.
    double deflection = 0;
    double slope = 0;
    double moment = 0;
    double shear = 0;
    int first = pieces.firstPiece(i);
    for (int piece = first; piece < pieces.firstPiece(i + 1); piece++) {
      if (piece > first) {
        shear -= loads.force[piece];
        moment += loads.couple[piece];
      }
      double s = pieces.length(piece);
      double w = loads.intensity[piece];
      double g = loads.gradient[piece];
      deflection += s * (slope - s * (moment / 2 + s * (shear / 6 - s * (w / 24 + s * g / 120))));
      slope -= s * (moment + s * (shear / 2 - s * (w / 6 + s * g / 24)));
      moment += s * (shear - s * (w / 2 + s * g / 6));
      shear -= s * (w + s * g / 2);
    }
    double length = pieces.mesh().length(i);
    double sag = deflection / (length * length);
    if (pieces.mesh().released(i)) {
      momentStart[i] = 3 * sag + moment / 2;
      shearStart[i] = -(momentStart[i] + moment) / length;
    } else {
      double turn = slope / length;
      momentStart[i] = 6 * sag - 2 * turn;
      shearStart[i] = (6 * turn - 12 * sag) / length;
      momentEnd[i] = moment + momentStart[i] + shearStart[i] * length;
    }
    shearEnd[i] = shear + shearStart[i];
  }
}
