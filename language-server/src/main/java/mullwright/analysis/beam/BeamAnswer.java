package mullwright.analysis.beam;

import java.util.List;
import java.util.stream.Collectors;
import mullwright.analysis.Refusal;

/** What {@link HingedBeam} answers: the responses, or that the run can move, or a refusal. */
public sealed interface BeamAnswer {

  /**
   * The run stands.
   *
   * @param responses one for each load case, in the order given
   */
  record Solved(List<BeamResponse> responses) implements BeamAnswer {

    /** Keeps its own copy of the list. */
    public Solved {
      responses = List.copyOf(responses);
    }

    /**
     * Superposes the cases, since the method is linear in the load.
     *
     * @param name name of the combination
     * @param factors one factor for each response, in their order
     * @throws IllegalArgumentException if the number of factors is not the number of responses
     */
    public BeamResponse combine(String name, double... factors) {
      if (factors.length != responses.size() || factors.length == 0) {
        throw new IllegalArgumentException(
            factors.length + " factors for " + responses.size() + " load cases");
      }
      BeamResponse sum = responses.get(0).times(factors[0]);
      for (int i = 1; i < factors.length; i++) {
        sum = sum.plus(responses.get(i).times(factors[i]));
      }
      return sum.named(name);
    }
  }

  /**
   * Part of the run can move without bending, so there is nothing to solve.
   *
   * @param moving the parts that can move, from the start on; never empty
   */
  record Mechanism(List<MovingStretch> moving) implements BeamAnswer {

    /** Keeps its own copy of the list. */
    public Mechanism {
      moving = List.copyOf(moving);
    }

    /** Number of independent motions. */
    public int degrees() {
      return moving.stream().mapToInt(MovingStretch::degrees).sum();
    }

    /** All motions in words, one sentence each. */
    public String sentence() {
      return moving.stream().map(MovingStretch::sentence).collect(Collectors.joining(" "));
    }
  }

  /**
   * The input is not a beam this method can take.
   *
   * @param refusal what was out of range
   */
  record Refused(Refusal refusal) implements BeamAnswer {}
}
