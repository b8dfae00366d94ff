package mullwright.analysis.beam;

import java.util.List;

/**
 * The run cut at every node and every step of any load, so that on each piece the load is one
 * straight line and the deflection one polynomial.
 */
final class BeamPieces {
  /** Load steps nearer than this [m] are rounding of one place. */
  private static final double DUST = 1e-9;

  private final BeamMesh mesh;
  private final double[] breaks;
  private final double[] rigidity;
  private final int[] firstPiece;

  private BeamPieces(BeamMesh mesh, double[] breaks) {
    this.mesh = mesh;
    this.breaks = breaks;
    this.rigidity = new double[breaks.length - 1];
    this.firstPiece = new int[mesh.size()];
    int piece = 0;
    for (int element = 0; element < mesh.elements(); element++) {
      firstPiece[element] = piece;
      while (piece < rigidity.length && breaks[piece] < mesh.node(element + 1)) {
        rigidity[piece++] = mesh.rigidity(element);
      }
    }
    firstPiece[mesh.elements()] = piece;
  }

  static BeamPieces of(BeamMesh mesh, List<LoadCase> cases) {
    int loads = 0;
    for (LoadCase each : cases) {
      loads += each.loads().size();
    }
    SortedPlaces places = new SortedPlaces(mesh.size() + 2 * loads, DUST);
    for (double node : mesh.nodes()) {
      places.add(node);
    }
    for (LoadCase each : cases) {
      for (BeamLoad load : each.loads()) {
        if (load instanceof BeamLoad.Distributed d) {
          places.add(d.from());
          places.add(d.to());
        } else if (load instanceof BeamLoad.PointForce p) {
          places.add(p.at());
        } else if (load instanceof BeamLoad.Couple c) {
          places.add(c.at());
        }
      }
    }
    return new BeamPieces(mesh, places.toArray());
  }

  BeamMesh mesh() {
    return mesh;
  }

  int size() {
    return rigidity.length;
  }

  double start(int piece) {
    return breaks[piece];
  }

  double length(int piece) {
    return breaks[piece + 1] - breaks[piece];
  }

  double rigidity(int piece) {
    return rigidity[piece];
  }

  /** The piece that starts at a node; one past the last piece for the last node. */
  int firstPiece(int node) {
    return firstPiece[node];
  }

  /** The break nearest to a place. */
  int breakAt(double place) {
    return SortedPlaces.nearest(breaks, breaks.length, place);
  }

  /** The piece a place lies on; at a break, the one that starts there. */
  int pieceAt(double place) {
    int piece = breakAt(place);
    if (breaks[piece] > place) {
      piece--;
    }
    return Math.max(0, Math.min(piece, size() - 1));
  }
}
