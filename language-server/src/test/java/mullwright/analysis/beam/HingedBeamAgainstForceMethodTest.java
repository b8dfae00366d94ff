package mullwright.analysis.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Beams of every sort, solved a second way (textbook, force method with quadrature of M/EI). */
class HingedBeamAgainstForceMethodTest {
  private static final int BEAMS = 40;

  /**
   * Ends of parts that fall within a millimetre of one another cost the stiffness method digits.
   */
  private static final double DIGITS = 1e-5;

  /** Spans of 0.8 to 6 m, ends that stand over, a rigidity for each part, a hinge in some spans. */
  private static Beam beam(SplittableRandom random, int spans, boolean hinged) {
    List<Beam.Support> supports = new ArrayList<>();
    List<Beam.Hinge> hinges = new ArrayList<>();
    double at = random.nextBoolean() ? 0 : random.nextDouble(0.1, 1.5);
    supports.add(Beam.Support.pin(at));
    int without = random.nextInt(spans);
    for (int span = 0; span < spans; span++) {
      double length = random.nextDouble(0.8, 6);
      if (hinged && span != without && random.nextInt(3) > 0) {
        hinges.add(new Beam.Hinge(at + length * random.nextDouble(0.05, 0.95)));
      }
      at += length;
      supports.add(Beam.Support.pin(at));
    }
    double end = random.nextBoolean() ? at : at + random.nextDouble(0.1, 1.5);
    List<Beam.Stretch> stretches = new ArrayList<>();
    double from = 0;
    while (from < end) {
      double to = Math.min(end, from + random.nextDouble(0.5, 4));
      to = end - to < 0.05 ? end : to;
      stretches.add(new Beam.Stretch(from, to, random.nextDouble(0.2, 3) * 2e5));
      from = to;
    }
    double bar = random.nextDouble(0, end / 2);
    stretches.add(new Beam.Stretch(bar, random.nextDouble(bar + 0.1, end), 1.5e5));
    return new Beam(0, end, stretches, supports, hinges);
  }

  private static List<BeamLoad> loads(SplittableRandom random, double end) {
    List<BeamLoad> loads = new ArrayList<>();
    loads.add(BeamLoad.Distributed.uniform(0, end, random.nextDouble(500, 4000)));
    for (int i = 0; i < 4; i++) {
      double from = random.nextDouble(0, end * 0.9);
      double to = random.nextDouble(from + 0.05, end);
      double height = random.nextDouble(-3000, 3000);
      loads.add(
          switch (i) {
            case 0 -> BeamLoad.Distributed.uniform(from, to, height);
            case 1 -> new BeamLoad.Distributed(from, to, 0, height);
            case 2 -> new BeamLoad.Distributed(from, to, height, random.nextDouble(0, 2000));
            default -> new BeamLoad.PointForce(from, height);
          });
    }
    loads.add(new BeamLoad.Couple(random.nextDouble(0, end), random.nextDouble(-900, 900)));
    return loads;
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5})
  void reactionsMomentsAndDeflectionsAgree(int spans) {
    for (int i = 0; i < BEAMS; i++) {
      SplittableRandom random = new SplittableRandom(1000L * spans + i);
      Beam beam = beam(random, spans, i % 2 == 1);
      List<BeamLoad> loads = loads(random, beam.end());
      BeamResponse response = BeamFixtures.solve(beam, loads.toArray(BeamLoad[]::new));
      ForceMethod other = new ForceMethod(beam, loads);
      String name = spans + " spans, beam " + i;
      double forces = 4000 * beam.end();
      for (int s = 0; s <= spans; s++) {
        assertThat(response.reactions().get(s).force())
            .as(name + ", reaction " + s)
            .isCloseTo(other.reaction(s), within(DIGITS * forces));
      }
      double largest = response.deflections(0, beam.end()).largest().value();
      for (double x = 0.0137; x < beam.end(); x += beam.end() / 37) {
        assertThat(response.momentAt(x))
            .as(name + ", moment at " + x)
            .isCloseTo(other.moment(x), within(DIGITS * forces * beam.end()));
        assertThat(response.deflectionAt(x))
            .as(name + ", deflection at " + x)
            .isCloseTo(other.deflection(x), within(10 * DIGITS * Math.abs(largest)));
      }
    }
  }
}
