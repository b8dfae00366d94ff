package mullwright.analysis.beam;

import java.util.Arrays;

/**
 * Nodes where something about the beam itself changes, and the two-node elements between them.
 *
 * <p>Loads make no nodes: their steps may lie arbitrarily close together, and a very short element
 * costs accuracy.
 */
final class BeamMesh {
  private final double[] nodes;
  private final double[] rigidity;
  private final double[] stiffness;
  private final boolean[] hinge;

  private BeamMesh(double[] nodes) {
    this.nodes = nodes;
    this.rigidity = new double[nodes.length - 1];
    this.stiffness = new double[nodes.length];
    this.hinge = new boolean[nodes.length];
  }

  /** Lays nodes; supports and the ends keep their places, what lies on them is moved there. */
  static BeamMesh of(Beam beam) {
    SortedPlaces places =
        new SortedPlaces(
            2 + beam.supports().size() + beam.hinges().size() + 2 * beam.stretches().size(),
            HingedBeam.COINCIDENT);
    places.add(beam.start());
    places.add(beam.end());
    beam.supports().forEach(support -> places.add(support.at()));
    beam.hinges().forEach(hinge -> places.add(hinge.at()));
    for (Beam.Stretch stretch : beam.stretches()) {
      places.add(stretch.from());
      places.add(stretch.to());
    }
    BeamMesh mesh = new BeamMesh(places.toArray());
    for (Beam.Support support : beam.supports()) {
      mesh.stiffness[mesh.nodeAt(support.at())] = support.stiffness();
    }
    for (Beam.Hinge each : beam.hinges()) {
      int node = mesh.nodeAt(each.at());
      // A hinge at an end releases nothing: the moment is nil there anyway.
      mesh.hinge[node] = node > 0 && node < mesh.nodes.length - 1;
    }
    for (Beam.Stretch stretch : beam.stretches()) {
      int last = mesh.nodeAt(stretch.to());
      for (int element = mesh.nodeAt(stretch.from()); element < last; element++) {
        mesh.rigidity[element] += stretch.rigidity();
      }
    }
    return mesh;
  }

  int size() {
    return nodes.length;
  }

  int elements() {
    return nodes.length - 1;
  }

  double node(int i) {
    return nodes[i];
  }

  double length(int element) {
    return nodes[element + 1] - nodes[element];
  }

  double rigidity(int element) {
    return rigidity[element];
  }

  /** Stiffness of the support at a node: 0 for none, infinite for a pin. */
  double stiffness(int node) {
    return stiffness[node];
  }

  boolean supported(int node) {
    return stiffness[node] > 0;
  }

  boolean pinned(int node) {
    return stiffness[node] == Double.POSITIVE_INFINITY;
  }

  boolean hinge(int node) {
    return hinge[node];
  }

  /** Whether the moment at an element's right end is released. */
  boolean released(int element) {
    return hinge[element + 1];
  }

  /** The node nearest to a place. */
  int nodeAt(double place) {
    return SortedPlaces.nearest(nodes, nodes.length, place);
  }

  boolean hingeAt(double place) {
    int node = nodeAt(place);
    return hinge[node] && Math.abs(nodes[node] - place) <= HingedBeam.COINCIDENT;
  }

  double[] nodes() {
    return Arrays.copyOf(nodes, nodes.length);
  }
}
