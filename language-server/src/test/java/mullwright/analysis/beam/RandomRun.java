package mullwright.analysis.beam;

import static mullwright.analysis.beam.BeamFixtures.EI;
import static mullwright.analysis.beam.BeamFixtures.at;
import static mullwright.analysis.beam.BeamFixtures.hinges;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** A run of unequal floors with a splice above each anchor and mixed loads; the same for a seed. */
final class RandomRun {
  final Beam beam;
  final List<BeamLoad> loads = new ArrayList<>();
  private double size;

  RandomRun(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Beam.Support> supports = new ArrayList<>();
    List<Beam.Hinge> hinges = new ArrayList<>();
    double at = 0.4;
    int floors = random.nextInt(3, 12);
    for (int i = 0; i <= floors; i++) {
      supports.add(Beam.Support.pin(at));
      if (i > 0 && i < floors) {
        hinges.add(new Beam.Hinge(at + random.nextDouble(0.2, 0.9)));
      }
      at += random.nextDouble(2.8, 4.8);
    }
    List<Beam.Stretch> stretches = new ArrayList<>();
    stretches.add(new Beam.Stretch(0, at, EI));
    stretches.add(new Beam.Stretch(1.1, 2.3, 0.7 * EI));
    beam = new Beam(0, at, stretches, supports, hinges);
    for (int i = 0; i < 6; i++) {
      double from = random.nextDouble(0, at);
      double to = random.nextDouble(from, at);
      loads.add(
          new BeamLoad.Distributed(
              from, to, random.nextDouble(-2000, 2000), random.nextDouble(-2000, 2000)));
      loads.add(new BeamLoad.PointForce(from, random.nextDouble(-900, 900)));
      loads.add(new BeamLoad.Couple(to, random.nextDouble(-900, 900)));
    }
  }

  BeamResponse solve() {
    return BeamFixtures.solve(beam, loads.toArray(BeamLoad[]::new));
  }

  /** Resultant force, by the closed form of a trapezoid's area. */
  double force() {
    double sum = 0;
    for (BeamLoad load : loads) {
      if (load instanceof BeamLoad.Distributed d) {
        sum += (d.atFrom() + d.atTo()) / 2 * (d.to() - d.from());
      } else if (load instanceof BeamLoad.PointForce p) {
        sum += p.force();
      }
    }
    return sum;
  }

  /** Moment of the loads about the origin, by the closed form of a trapezoid's first moment. */
  double moment() {
    double sum = 0;
    for (BeamLoad load : loads) {
      if (load instanceof BeamLoad.Distributed d) {
        double length = d.to() - d.from();
        double area = (d.atFrom() + d.atTo()) / 2 * length;
        sum += area * d.from() + length * length * (d.atFrom() + 2 * d.atTo()) / 6;
      } else if (load instanceof BeamLoad.PointForce p) {
        sum += p.force() * p.at();
      } else if (load instanceof BeamLoad.Couple c) {
        sum += c.moment();
      }
    }
    return sum;
  }

  double size() {
    if (size == 0) {
      size = 2000 * beam.end();
    }
    return size;
  }
}
