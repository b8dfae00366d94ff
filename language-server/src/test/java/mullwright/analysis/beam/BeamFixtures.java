package mullwright.analysis.beam;

import static mullwright.analysis.UsUnits.IN;
import static mullwright.analysis.UsUnits.LB;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;

/** Short spellings for beams in inches and pounds. */
final class BeamFixtures {
  /** The handbook's EI = 80e6 lb·in². */
  static final double EI = 80e6 * LB * IN * IN;

  /** The handbook's line load, 12.5 lb/in. */
  static final double W = 12.5 * LB / IN;

  private BeamFixtures() {}

  /** A uniform beam of the handbook's rigidity; all places in inches. */
  static Beam inches(double start, double end, double[] supports, double... hinges) {
    return Beam.uniform(start * IN, end * IN, EI, pins(supports), hinges(hinges));
  }

  static double[] at(double... places) {
    return places;
  }

  static List<Beam.Support> pins(double... inches) {
    return Arrays.stream(inches).mapToObj(place -> Beam.Support.pin(place * IN)).toList();
  }

  static List<Beam.Hinge> hinges(double... inches) {
    return Arrays.stream(inches).mapToObj(place -> new Beam.Hinge(place * IN)).toList();
  }

  /** The handbook's line load over the whole beam. */
  static BeamResponse uniformly(Beam beam) {
    return solve(beam, BeamLoad.Distributed.uniform(beam.start(), beam.end(), W));
  }

  static BeamResponse solve(Beam beam, BeamLoad... loads) {
    BeamAnswer answer = HingedBeam.solve(BeamProblem.of(beam, "in", loads));
    assertThat(answer).isInstanceOf(BeamAnswer.Solved.class);
    return ((BeamAnswer.Solved) answer).responses().get(0);
  }

  static BeamAnswer.Mechanism mechanism(Beam beam) {
    BeamAnswer answer = HingedBeam.solve(BeamProblem.of(beam, "in"));
    assertThat(answer).isInstanceOf(BeamAnswer.Mechanism.class);
    return (BeamAnswer.Mechanism) answer;
  }

  static String refused(BeamProblem problem) {
    BeamAnswer answer = HingedBeam.solve(problem);
    assertThat(answer).isInstanceOf(BeamAnswer.Refused.class);
    return ((BeamAnswer.Refused) answer).refusal().sentence();
  }

  /** Reactions in pounds. */
  static double[] pounds(BeamResponse response) {
    return response.reactions().stream().mapToDouble(r -> r.force() / LB).toArray();
  }

  /** A moment in lb·in. */
  static double poundInches(double moment) {
    return moment / (LB * IN);
  }
}
