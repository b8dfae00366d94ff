package mullwright.analysis.beam;

import java.util.ArrayList;
import java.util.List;
import mullwright.analysis.Formula;
import mullwright.analysis.Outcome;
import mullwright.analysis.Refusal;

/**
 * Bending of a run over any number of supports, with splices as hinges, by direct stiffness.
 *
 * <p>Two-node cubic elements between the places where the beam itself changes: stiffness of an
 * element {@code EI/L³ · [12 6L −12 6L; 4L² −6L 2L²; 12 −6L; 4L²]}, with the rotation at a hinge
 * condensed out. Loads act through their exact fixed-end forces, and from the solved start of each
 * element the exact polynomials are carried on from load step to load step, so nothing is
 * interpolated:
 *
 * <pre>
 * V(s) = V₀ − w·s − g·s²/2
 * M(s) = M₀ + V₀·s − w·s²/2 − g·s³/6
 * θ(s) = θ₀ − (M₀·s + V₀·s²/2 − w·s³/6 − g·s⁴/24)/EI
 * v(s) = v₀ + θ₀·s − (M₀·s²/2 + V₀·s³/6 − w·s⁴/24 − g·s⁵/120)/EI
 * </pre>
 *
 * <p>Symbols: s distance along a piece [m]; w line load at its start [N/m], g its gradient [N/m²];
 * V shear [N], M moment [N·m] (positive where the side towards which the load pushes is in
 * tension), θ slope, v deflection [m] (positive the way the load pushes); EI flexural rigidity
 * [N·m²]. Reactions are positive against positive load.
 *
 * <p>Range: linear elastic, small deflection, no shear deformation, no axial force. A run that can
 * move without bending is a {@link BeamAnswer.Mechanism}, named and not solved. Places nearer to
 * one another than {@link #COINCIDENT} are one place.
 *
 * <p>Source: textbook matrix structural analysis; the splice as a hinge is the idealisation of a
 * sliding sleeve (common practice).
 */
public final class HingedBeam {
  /** Two places of a beam nearer than this [m] are taken for one: a tenth of a millimetre. */
  public static final double COINCIDENT = 1e-4;

  /** How every number of a response came about; its inputs are lists, so they are named in kind. */
  public static final Formula METHOD =
      new Formula(
          "direct stiffness of the run over its supports, splices as hinges, under its loads",
          "matrix structural analysis, exact for each element");

  private static final Refusal OUT_OF_DIGITS =
      new Refusal(
          "response of the beam",
          Double.NaN,
          "",
          "within the reach of double precision; its rigidities, lengths or loads are too far"
              + " apart");

  private HingedBeam() {}

  /** Solves a beam for all its load cases; see the class for method, signs and range. */
  public static BeamAnswer solve(BeamProblem problem) {
    Outcome<BeamMesh> checked = BeamCheck.mesh(problem);
    if (checked instanceof Outcome.Refused<BeamMesh> refused) {
      return new BeamAnswer.Refused(refused.refusal());
    }
    BeamMesh mesh = ((Outcome.Solved<BeamMesh>) checked).value();
    List<MovingStretch> moving = BeamMotion.of(mesh);
    if (!moving.isEmpty()) {
      return new BeamAnswer.Mechanism(moving);
    }
    BeamPieces pieces = BeamPieces.of(mesh, problem.cases());
    BeamSolver solver = new BeamSolver(pieces);
    if (!solver.factor()) {
      return new BeamAnswer.Refused(OUT_OF_DIGITS);
    }
    List<BeamResponse> responses = new ArrayList<>(problem.cases().size());
    for (LoadCase each : problem.cases()) {
      BeamResponse response = solver.solve(problem.beam(), each);
      if (!response.finite()) {
        return new BeamAnswer.Refused(OUT_OF_DIGITS);
      }
      responses.add(response);
    }
    return new BeamAnswer.Solved(responses);
  }
}
