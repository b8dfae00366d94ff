package mullwright.analysis.beam;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleUnaryOperator;
import mullwright.analysis.OutsideCheck;
import org.junit.jupiter.api.Test;

/** Beams of every sort, solved a second way (textbook, force method with quadrature of M/EI). */
public class HingedBeamAgainstForceMethodTest {
  private static final int BEAMS = 40;

  /**
   * Ends of parts that fall within a millimetre of one another cost the stiffness method digits.
   */
  private static final double TOLERANCE = 1e-4;

  private static final int MOST_SPANS = 5;

  /** Spans of 0.8 to 6 m, ends that stand over, a rigidity for each part, a hinge in some spans. */
  private static Beam random(SplittableRandom random, int spans, boolean hinged) {
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

  /** One beam solved both ways. */
  private record Twice(String name, Beam beam, BeamResponse response, ForceMethod other) {
    static Twice of(int spans, int number) {
      SplittableRandom random = new SplittableRandom(1000L * spans + number);
      Beam beam = random(random, spans, number % 2 == 1);
      List<BeamLoad> loads = loads(random, beam.end());
      return new Twice(
          spans + " spans, beam " + number,
          beam,
          BeamFixtures.solve(beam, loads.toArray(BeamLoad[]::new)),
          new ForceMethod(beam, loads));
    }

    /** The greatest difference of a kind, beside the greatest value. */
    OutsideCheck check(String what, DoubleUnaryOperator found, DoubleUnaryOperator expected) {
      double greatest = 0;
      double apart = 0;
      for (double x = 0.0137; x < beam.end(); x += beam.end() / 37) {
        greatest = Math.max(greatest, Math.abs(expected.applyAsDouble(x)));
        apart = Math.max(apart, Math.abs(found.applyAsDouble(x) - expected.applyAsDouble(x)));
      }
      return new OutsideCheck(
          what + " of " + name,
          greatest + apart,
          greatest,
          TOLERANCE,
          "force method with quadrature of M/EI, share of the greatest in the case");
    }
  }

  /** Moments, deflections and reactions of all beams. */
  public static List<OutsideCheck> comparisons() {
    List<OutsideCheck> checks = new ArrayList<>();
    for (int spans = 1; spans <= MOST_SPANS; spans++) {
      for (int number = 0; number < BEAMS; number++) {
        Twice twice = Twice.of(spans, number);
        BeamResponse response = twice.response();
        ForceMethod other = twice.other();
        checks.add(twice.check("moment", response::momentAt, other::moment));
        checks.add(twice.check("deflection", response::deflectionAt, other::deflection));
        double greatest = 0;
        double apart = 0;
        for (int s = 0; s <= spans; s++) {
          greatest = Math.max(greatest, Math.abs(other.reaction(s)));
          double found = response.reactions().get(s).force();
          apart = Math.max(apart, Math.abs(found - other.reaction(s)));
        }
        checks.add(
            new OutsideCheck(
                "reactions of " + twice.name(),
                greatest + apart,
                greatest,
                TOLERANCE,
                "force method with quadrature of M/EI, share of the greatest in the case"));
      }
    }
    return checks;
  }

  @Test
  void reactionsMomentsAndDeflectionsAgree() {
    comparisons().forEach(OutsideCheck::hold);
  }
}
