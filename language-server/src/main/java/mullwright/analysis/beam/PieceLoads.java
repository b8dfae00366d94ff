package mullwright.analysis.beam;

import java.util.List;

/** One load case laid on the pieces: line loads on each piece, forces and couples at each break. */
final class PieceLoads {
  /** Intensity at the start of each piece [N/m]. */
  final double[] intensity;

  /** Change of intensity along each piece [N/m²]. */
  final double[] gradient;

  /** Force at each break [N]. */
  final double[] force;

  /** Couple at each break [N·m]. */
  final double[] couple;

  PieceLoads(BeamPieces pieces, List<BeamLoad> loads) {
    intensity = new double[pieces.size()];
    gradient = new double[pieces.size()];
    force = new double[pieces.size() + 1];
    couple = new double[pieces.size() + 1];
    for (BeamLoad load : loads) {
      if (load instanceof BeamLoad.Distributed d) {
        spread(pieces, d);
      } else if (load instanceof BeamLoad.PointForce p) {
        force[pieces.breakAt(p.at())] += p.force();
      } else if (load instanceof BeamLoad.Couple c) {
        couple[pieces.breakAt(c.at())] += c.moment();
      }
    }
  }

  private void spread(BeamPieces pieces, BeamLoad.Distributed load) {
    int last = pieces.breakAt(load.to());
    double length = load.to() - load.from();
    double slope = length > 0 ? (load.atTo() - load.atFrom()) / length : 0;
    for (int piece = pieces.breakAt(load.from()); piece < last; piece++) {
      intensity[piece] += load.atFrom() + slope * (pieces.start(piece) - load.from());
      gradient[piece] += slope;
    }
  }
}
