package mullwright.analysis.beam;

/** Assembles and factors the stiffness of a beam once, then solves it load case by load case. */
final class BeamSolver {
  private final BeamPieces pieces;
  private final BeamMesh mesh;
  private final BlockTridiagonal stiffness;

  BeamSolver(BeamPieces pieces) {
    this.pieces = pieces;
    this.mesh = pieces.mesh();
    this.stiffness = new BlockTridiagonal(mesh.size());
  }

  /** Assembles and factors; false when double precision cannot tell the parts' stiffness apart. */
  boolean factor() {
    for (int i = 0; i < mesh.elements(); i++) {
      double length = mesh.length(i);
      if (mesh.released(i)) {
        double k = 3 * mesh.rigidity(i) / (length * length * length);
        stiffness.addDiagonal(i, k, k * length, k * length * length);
        stiffness.addDiagonal(i + 1, k, 0, 0);
        stiffness.setCoupling(i, -k, 0, -k * length, 0);
      } else {
        double k = 2 * mesh.rigidity(i) / (length * length * length);
        double shear = 6 * k;
        double cross = 3 * k * length;
        double near = 2 * k * length * length;
        stiffness.addDiagonal(i, shear, cross, near);
        stiffness.addDiagonal(i + 1, shear, -cross, near);
        stiffness.setCoupling(i, -shear, cross, -cross, near / 2);
      }
    }
    for (int node = 0; node < mesh.size(); node++) {
      if (mesh.pinned(node)) {
        stiffness.hold(node);
      } else {
        stiffness.addDiagonal(node, mesh.stiffness(node), 0, 0);
      }
    }
    return stiffness.factor();
  }

  BeamResponse solve(Beam beam, LoadCase loadCase) {
    PieceLoads loads = new PieceLoads(pieces, loadCase.loads());
    FixedEnds fixed = new FixedEnds(pieces, loads);
    double[] deflection = new double[mesh.size()];
    double[] rotation = new double[mesh.size()];
    for (int i = 0; i < mesh.elements(); i++) {
      deflection[i] += fixed.shearStart[i];
      rotation[i] -= fixed.momentStart[i];
      deflection[i + 1] -= fixed.shearEnd[i];
      rotation[i + 1] += fixed.momentEnd[i];
    }
    for (int node = 0; node < mesh.size(); node++) {
      int at = pieces.firstPiece(node);
      deflection[node] = mesh.pinned(node) ? 0 : deflection[node] + loads.force[at];
      rotation[node] += loads.couple[at];
    }
    stiffness.solve(deflection, rotation);
    return respond(beam, loadCase.name(), loads, fixed, deflection, rotation);
  }

  private BeamResponse respond(
      Beam beam,
      String name,
      PieceLoads loads,
      FixedEnds fixed,
      double[] deflection,
      double[] rotation) {
    PieceStates states = new PieceStates(pieces.size());
    double[] reactions = new double[mesh.size()];
    double shearBefore = 0;
    for (int i = 0; i < mesh.elements(); i++) {
      double length = mesh.length(i);
      double rigidity = mesh.rigidity(i);
      double drop = deflection[i] - deflection[i + 1];
      double moment;
      double shear;
      if (mesh.released(i)) {
        moment = 3 * rigidity / (length * length) * (drop + length * rotation[i]);
        shear = -moment / length;
      } else {
        double k = 2 * rigidity / (length * length);
        moment = k * (3 * drop + length * (2 * rotation[i] + rotation[i + 1]));
        shear = -3 * k / length * (2 * drop + length * (rotation[i] + rotation[i + 1]));
      }
      int first = pieces.firstPiece(i);
      // Known exactly, so not left to rounding: nothing but a couple bends an end or a hinge.
      boolean free = i == 0 || mesh.hinge(i);
      double startMoment = free ? loads.couple[first] : fixed.momentStart[i] + moment;
      double startShear = fixed.shearStart[i] + shear;
      states.begin(first, deflection[i], rotation[i], startMoment, startShear);
      reactions[i] = startShear - shearBefore + loads.force[first];
      shearBefore = states.carry(pieces, loads, first, pieces.firstPiece(i + 1));
    }
    int last = mesh.elements();
    reactions[last] = -shearBefore + loads.force[pieces.firstPiece(last)];
    return new BeamResponse(name, beam, pieces, states, reactions);
  }
}
