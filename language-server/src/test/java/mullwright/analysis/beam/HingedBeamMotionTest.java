package mullwright.analysis.beam;

import static mullwright.analysis.UsUnits.IN;
import static mullwright.analysis.beam.BeamFixtures.EI;
import static mullwright.analysis.beam.BeamFixtures.W;
import static mullwright.analysis.beam.BeamFixtures.at;
import static mullwright.analysis.beam.BeamFixtures.hinges;
import static mullwright.analysis.beam.BeamFixtures.inches;
import static mullwright.analysis.beam.BeamFixtures.mechanism;
import static mullwright.analysis.beam.BeamFixtures.pins;
import static mullwright.analysis.beam.BeamFixtures.poundInches;
import static mullwright.analysis.beam.BeamFixtures.pounds;
import static mullwright.analysis.beam.BeamFixtures.refused;
import static mullwright.analysis.beam.BeamFixtures.uniformly;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** What {@link HingedBeam} does not solve: runs that can move, and what is no beam. */
class HingedBeamMotionTest {
  private static final Percentage TENTH = withinPercentage(0.1);
  private static final Percentage EXACT = withinPercentage(1e-7);

  @Nested
  class Mechanisms {

    @Test
    void lengthWithoutSupport() {
      BeamAnswer.Mechanism m = mechanism(inches(0, 100, at()));
      assertThat(m.degrees()).isEqualTo(2);
      assertThat(m.moving().get(0).motion()).isEqualTo(MovingStretch.Motion.DRIFTS);
      assertThat(m.sentence())
          .isEqualTo("segment 1 (from 0.000 to 2.540 m) has no support: nothing holds it.");
    }

    @Test
    void lengthOnOneSupport() {
      BeamAnswer.Mechanism m = mechanism(inches(0, 100, at(30)));
      assertThat(m.degrees()).isEqualTo(1);
      assertThat(m.sentence())
          .isEqualTo("segment 1 (from 0.000 to 2.540 m) can swing: it is held only at 0.762 m.");
    }

    @Test
    void upperLengthHeldOnlyByItsSplice() {
      BeamAnswer.Mechanism m = mechanism(inches(0, 250, at(0, 144), 170));
      assertThat(m.moving()).hasSize(1);
      assertThat(m.moving().get(0).firstSegment()).isEqualTo(2);
      assertThat(m.moving().get(0).motion()).isEqualTo(MovingStretch.Motion.SWINGS);
      assertThat(m.sentence()).startsWith("segment 2 (from 4.318 to 6.350 m) can swing");
    }

    @Test
    void hingeInASimpleSpan() {
      BeamAnswer.Mechanism m = mechanism(inches(0, 100, at(0, 100), 40));
      assertThat(m.degrees()).isEqualTo(1);
      assertThat(m.moving().get(0).motion()).isEqualTo(MovingStretch.Motion.FOLDS);
      assertThat(m.sentence())
          .isEqualTo(
              "segments 1 to 2 (from 0.000 to 2.540 m) can fold at the hinge at 1.016 m:"
                  + " it is held only at 0.000, 2.540 m.");
    }

    @Test
    void threeHingesInOneSpan() {
      BeamAnswer.Mechanism m = mechanism(inches(0, 300, at(0, 100, 200, 300), 120, 150, 180));
      assertThat(m.degrees()).isEqualTo(1);
      assertThat(m.moving().get(0).looseHinges()).containsExactly(150 * IN);
      assertThat(m.moving().get(0).firstSegment()).isEqualTo(2);
      assertThat(m.moving().get(0).lastSegment()).isEqualTo(3);
    }

    @Test
    void twoFarPartsAreNamedApart() {
      BeamAnswer.Mechanism m =
          mechanism(inches(0, 500, at(0, 100, 200, 300, 400, 500), 20, 50, 440, 470));
      assertThat(m.moving()).hasSize(2);
      assertThat(m.moving().get(0).from()).isEqualTo(0);
      assertThat(m.moving().get(1).to()).isEqualTo(500 * IN);
    }

    @Test
    void twoHingesInOneSpanStand() {
      uniformly(inches(0, 300, at(0, 100, 200, 300), 120, 180));
    }

    @Test
    void hingeOnASupportStands() {
      BeamResponse r = uniformly(inches(0, 288, at(0, 144, 288), 144));
      // Two simple spans: closed form, recomputed
      assertThat(pounds(r)).containsExactly(new double[] {900, 1800, 900}, within(1e-6));
      assertThat(r.spans().get(1).sags().largest().value() / IN).isCloseTo(0.8748, TENTH);
    }

    @Test
    void hingeAHairFromASupportIsTakenToBeOnIt() {
      BeamResponse near = uniformly(inches(0, 288, at(0, 144, 288), 144.003));
      assertThat(near.momentAt(144 * IN)).isZero();
      assertThat(near.hinges().get(0).deflection()).isZero();
      BeamResponse apart = uniformly(inches(0, 288, at(0, 144, 288), 144.005));
      assertThat(apart.momentAt(144 * IN)).isNotZero();
    }

    @Test
    void hingeAtAnEndChangesNothing() {
      BeamResponse r = uniformly(inches(0, 144, at(0, 144), 0, 144));
      // Closed form, recomputed
      assertThat(poundInches(r.moments().greatest().value())).isCloseTo(32_400, TENTH);
    }

    @Test
    void countsTheMotionsThatThePlacesLeave() {
      SplittableRandom random = new SplittableRandom(77);
      int standing = 0;
      for (int run = 0; run < 3000; run++) {
        int end = random.nextInt(1, 13);
        List<Beam.Support> supports = new ArrayList<>();
        List<Beam.Hinge> hinges = new ArrayList<>();
        for (int place = 0; place <= end; place++) {
          if (random.nextInt(10) < 5) {
            supports.add(Beam.Support.pin(place));
          }
          if (place > 0 && place < end && random.nextInt(10) < 3) {
            hinges.add(new Beam.Hinge(place));
          }
        }
        Beam beam = Beam.uniform(0, end, 1, supports, hinges);
        BeamAnswer answer = HingedBeam.solve(BeamProblem.of(beam, "in"));
        int found = answer instanceof BeamAnswer.Mechanism m ? m.degrees() : 0;
        assertThat(found).as("%s", beam).isEqualTo(motionsByRank(beam));
        standing += found == 0 ? 1 : 0;
      }
      assertThat(standing).isBetween(300, 2700);
    }

    /** Motions of rigid bars: two unknowns each, less the rank of what hinges and supports ask. */
    private int motionsByRank(Beam beam) {
      List<Double> joints = new ArrayList<>();
      joints.add(beam.start());
      beam.hinges().forEach(hinge -> joints.add(hinge.at()));
      joints.add(beam.end());
      int bars = joints.size() - 1;
      List<double[]> rows = new ArrayList<>();
      for (int bar = 1; bar < bars; bar++) {
        double[] row = new double[2 * bars];
        row[2 * bar - 2] = 1;
        row[2 * bar - 1] = joints.get(bar);
        row[2 * bar] = -1;
        row[2 * bar + 1] = -joints.get(bar);
        rows.add(row);
      }
      for (Beam.Support support : beam.supports()) {
        int bar = 0;
        while (joints.get(bar + 1) < support.at()) {
          bar++;
        }
        double[] row = new double[2 * bars];
        row[2 * bar] = 1;
        row[2 * bar + 1] = support.at();
        rows.add(row);
      }
      return 2 * bars - rank(rows, 2 * bars);
    }

    private int rank(List<double[]> rows, int columns) {
      int rank = 0;
      for (int column = 0; column < columns && rank < rows.size(); column++) {
        int pivot = rank;
        for (int i = rank; i < rows.size(); i++) {
          if (Math.abs(rows.get(i)[column]) > Math.abs(rows.get(pivot)[column])) {
            pivot = i;
          }
        }
        if (Math.abs(rows.get(pivot)[column]) < 1e-9) {
          continue;
        }
        Collections.swap(rows, rank, pivot);
        double[] top = rows.get(rank);
        for (int i = rank + 1; i < rows.size(); i++) {
          double[] row = rows.get(i);
          double factor = row[column] / top[column];
          for (int j = column; j < columns; j++) {
            row[j] -= factor * top[j];
          }
        }
        rank++;
      }
      return rank;
    }

    @Test
    void stableFromTheFarEndOnly() {
      // Each length hangs on the one above it: the head length has two pins.
      BeamResponse r = uniformly(inches(0, 360, at(10, 130, 230, 350), 110, 220));
      double sum = 0;
      for (double reaction : pounds(r)) {
        sum += reaction;
      }
      assertThat(sum).isCloseTo(12.5 * 360, EXACT);
    }
  }

  @Nested
  class Refusals {

    @Test
    void beamWithoutLength() {
      assertThat(refused(BeamProblem.of(inches(5, 5, at(5)), "in")))
          .isEqualTo("length of the beam is 0 m; it must be greater than 0.0001.");
    }

    @Test
    void supportOutside() {
      assertThat(refused(BeamProblem.of(inches(0, 100, at(0, 200)), "in")))
          .isEqualTo("place of a support is 5.08 m; it must be on the beam.");
    }

    @Test
    void supportsOnOneAnother() {
      assertThat(refused(BeamProblem.of(inches(0, 100, at(0, 50, 50.001)), "in")))
          .contains("place of a support")
          .contains("more than 0.0001 m from the next one");
    }

    @Test
    void gapInTheRigidity() {
      Beam beam = new Beam(0, 4, List.of(new Beam.Stretch(0, 3, EI)), pins(0, 100), List.of());
      assertThat(refused(BeamProblem.of(beam, "in")))
          .isEqualTo("flexural rigidity from 3.0 to 4.0 m is 0 N·m²; it must be greater than 0.");
    }

    @Test
    void numbersThatAreNone() {
      Beam beam = inches(0, 100, at(0, 100));
      assertThat(refused(BeamProblem.of(beam, "in", new BeamLoad.PointForce(1, Double.NaN))))
          .isEqualTo("force is NaN N; it must be a finite number.");
      assertThat(
              refused(BeamProblem.of(beam, "in", BeamLoad.Distributed.uniform(0, Double.NaN, W))))
          .startsWith("end of a line load is NaN m");
      assertThat(refused(BeamProblem.of(inches(Double.NaN, 3, at()), "in")))
          .startsWith("start of the beam is NaN m");
    }

    @Test
    void coupleOnAHinge() {
      Beam beam = inches(0, 288, at(0, 144, 288), 174);
      assertThat(refused(BeamProblem.of(beam, "in", new BeamLoad.Couple(174 * IN, 5))))
          .startsWith("place of a couple is 4.4196 m; it must be clear of every hinge");
    }

    @Test
    void loadsTooGreatForTheNumbers() {
      Beam beam = inches(0, 100, at(0, 100));
      assertThat(refused(BeamProblem.of(beam, "in", BeamLoad.Distributed.uniform(0, 1, 1e308))))
          .contains("double precision");
    }
  }
}
