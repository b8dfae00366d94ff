package mullwright.analysis.beam;

import java.util.List;

/**
 * A beam and the load cases to solve it for; one factorisation serves all of them.
 *
 * @param beam the run of member
 * @param cases the load cases, in the order of the responses
 */
public record BeamProblem(Beam beam, List<LoadCase> cases) {

  /** Keeps its own copy of the list. */
  public BeamProblem {
    cases = List.copyOf(cases);
  }

  /** A beam under one case of that name. */
  public static BeamProblem of(Beam beam, String name, BeamLoad... loads) {
    return new BeamProblem(beam, List.of(new LoadCase(name, List.of(loads))));
  }
}
