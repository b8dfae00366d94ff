package mullwright.analysis.beam;

import static mullwright.analysis.UsUnits.IN;
import static mullwright.analysis.beam.BeamFixtures.EI;
import static mullwright.analysis.beam.BeamFixtures.W;
import static mullwright.analysis.beam.BeamFixtures.at;
import static mullwright.analysis.beam.BeamFixtures.inches;
import static mullwright.analysis.beam.BeamFixtures.pounds;
import static mullwright.analysis.beam.BeamFixtures.solve;
import static mullwright.analysis.beam.BeamFixtures.uniformly;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What every response of {@link HingedBeam} keeps, whatever the beam. */
class HingedBeamContractTest {
  private static final Percentage TENTH = withinPercentage(0.1);
  private static final Percentage EXACT = withinPercentage(1e-7);

  @Nested
  class Contract {

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void reactionsCarryTheLoadAndItsMoment(long seed) {
      RandomRun run = new RandomRun(seed);
      BeamResponse r = run.solve();
      double force = r.reactions().stream().mapToDouble(BeamResponse.Reaction::force).sum();
      double moment = r.reactions().stream().mapToDouble(x -> x.force() * x.at()).sum();
      assertThat(force).isCloseTo(run.force(), within(1e-6 * run.size()));
      assertThat(moment).isCloseTo(run.moment(), within(1e-6 * run.size() * run.beam.end()));
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void momentIsNilAndDeflectionContinuousAtEachHinge(long seed) {
      BeamResponse r = new RandomRun(seed).solve();
      assertThat(r.hinges()).isNotEmpty();
      for (BeamResponse.HingeValue hinge : r.hinges()) {
        assertThat(r.momentAt(hinge.at())).isZero();
        double before = r.deflectionAt(Math.nextDown(hinge.at()));
        assertThat(hinge.deflection()).isCloseTo(before, within(1e-9 * (1e-3 + Math.abs(before))));
        assertThat(hinge.shearAfter())
            .isCloseTo(hinge.shearBefore(), within(1e-6 * (1 + Math.abs(hinge.shearBefore()))));
        assertThat(Math.abs(hinge.kink())).isGreaterThan(0);
      }
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24})
    void endsBearNothingAndPinsStayPut(long seed) {
      RandomRun run = new RandomRun(seed);
      BeamResponse r = run.solve();
      assertThat(r.momentAt(run.beam.start())).isZero();
      assertThat(r.momentAt(run.beam.end())).isCloseTo(0, within(1e-6 * run.size()));
      for (Beam.Support support : run.beam.supports()) {
        assertThat(r.deflectionAt(support.at())).isZero();
        double before = r.deflectionAt(Math.nextDown(support.at()));
        assertThat(before).isCloseTo(0, within(1e-9));
      }
    }

    @Test
    void responseIsLinearInTheLoad() {
      Beam beam = inches(0, 432, at(0, 144, 288, 432), 170, 318);
      BeamLoad one = new BeamLoad.Distributed(10 * IN, 300 * IN, W, 3 * W);
      BeamLoad two = new BeamLoad.PointForce(222 * IN, -777);
      BeamAnswer.Solved both =
          (BeamAnswer.Solved)
              HingedBeam.solve(
                  new BeamProblem(
                      beam,
                      List.of(
                          new LoadCase("one", List.of(one)), new LoadCase("two", List.of(two)))));
      BeamResponse combined = both.combine("sum", 2, -3);
      BeamResponse direct =
          solve(
              beam,
              new BeamLoad.Distributed(10 * IN, 300 * IN, 2 * W, 6 * W),
              new BeamLoad.PointForce(222 * IN, 3 * 777));
      assertThat(combined.name()).isEqualTo("sum");
      for (int i = 0; i <= 432; i += 9) {
        double x = i * IN;
        assertThat(combined.momentAt(x)).isCloseTo(direct.momentAt(x), within(1e-8));
        assertThat(combined.shearAt(x)).isCloseTo(direct.shearAt(x), within(1e-7));
        assertThat(combined.deflectionAt(x)).isCloseTo(direct.deflectionAt(x), within(1e-12));
      }
      assertThat(combined.reactions()).hasSize(4);
      for (int i = 0; i < 4; i++) {
        assertThat(combined.reactions().get(i).force())
            .isCloseTo(direct.reactions().get(i).force(), within(1e-7));
      }
    }

    @Test
    void combinationNeedsOneFactorForEachCase() {
      BeamAnswer.Solved solved =
          (BeamAnswer.Solved) HingedBeam.solve(BeamProblem.of(inches(0, 10, at(0, 10)), "in"));
      assertThatThrownBy(() -> solved.combine("both", 1, 2))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessage("2 factors for 1 load cases");
    }

    @Test
    void mirroredBeamGivesTheMirroredResponse() {
      BeamResponse r =
          solve(
              inches(0, 300, at(0, 120, 300), 150),
              new BeamLoad.Distributed(20 * IN, 200 * IN, W, 0));
      BeamResponse mirrored =
          solve(
              inches(0, 300, at(0, 180, 300), 150),
              new BeamLoad.Distributed(100 * IN, 280 * IN, 0, W));
      for (int i = 0; i <= 300; i += 7) {
        double x = i * IN;
        double y = (300 - i) * IN;
        assertThat(r.momentAt(x)).isCloseTo(mirrored.momentAt(y), within(1e-8));
        assertThat(r.deflectionAt(x)).isCloseTo(mirrored.deflectionAt(y), within(1e-12));
      }
      assertThat(r.reactions().get(0).force())
          .isCloseTo(mirrored.reactions().get(2).force(), within(1e-8));
    }

    @Test
    void placeOfTheOriginDoesNotMatter() {
      BeamResponse here = uniformly(inches(0, 288, at(0, 144, 288), 174));
      BeamResponse there = uniformly(inches(5000, 5288, at(5000, 5144, 5288), 5174));
      assertThat(there.moments().greatest().value())
          .isCloseTo(here.moments().greatest().value(), withinPercentage(1e-8));
      assertThat(there.spans().get(1).sags().largest().value())
          .isCloseTo(here.spans().get(1).sags().largest().value(), withinPercentage(1e-8));
    }

    @Test
    void orderOfTheListsDoesNotMatter() {
      Beam sorted = inches(0, 432, at(0, 144, 288, 432), 170, 318);
      Beam shuffled = inches(0, 432, at(288, 0, 432, 144), 318, 170);
      assertThat(pounds(uniformly(shuffled))).isEqualTo(pounds(uniformly(sorted)));
    }

    @Test
    void aStretchBoundaryWithoutAChangeOfRigidityChangesNothing() {
      Beam whole = inches(0, 288, at(0, 144, 288), 174);
      Beam cut =
          new Beam(
              0,
              288 * IN,
              List.of(
                  new Beam.Stretch(0, 60.00001 * IN, EI),
                  new Beam.Stretch(60.00001 * IN, 61 * IN, EI),
                  new Beam.Stretch(61 * IN, 288 * IN, EI)),
              whole.supports(),
              whole.hinges());
      BeamResponse a = uniformly(whole);
      BeamResponse b = uniformly(cut);
      assertThat(b.moments().greatest().value())
          .isCloseTo(a.moments().greatest().value(), withinPercentage(1e-6));
      assertThat(b.spans().get(0).sags().largest().value())
          .isCloseTo(a.spans().get(0).sags().largest().value(), withinPercentage(1e-6));
    }

    // An element as short as a beam may have costs digits; this many must be left.
    @ParameterizedTest
    @ValueSource(doubles = {0.00011, 0.001, 0.01})
    void aVeryShortElementKeepsEnoughDigits(double metres) {
      Beam whole = inches(0, 288, at(0, 144, 288), 174);
      Beam cut =
          new Beam(
              0,
              288 * IN,
              List.of(
                  new Beam.Stretch(0, 174 * IN + metres, EI),
                  new Beam.Stretch(174 * IN + metres, 288 * IN, EI)),
              whole.supports(),
              whole.hinges());
      assertThat(uniformly(cut).moments().greatest().value())
          .isCloseTo(uniformly(whole).moments().greatest().value(), withinPercentage(0.01));
      assertThat(uniformly(cut).deflections(0, 144 * IN).greatest().value())
          .isCloseTo(
              uniformly(whole).deflections(0, 144 * IN).greatest().value(), withinPercentage(0.01));
    }

    @Test
    void loadStepsNextToOneAnotherChangeNothing() {
      Beam beam = inches(0, 288, at(0, 144, 288), 174);
      double x = 100 * IN;
      BeamResponse r =
          solve(
              beam,
              BeamLoad.Distributed.uniform(0, x, W),
              BeamLoad.Distributed.uniform(x, x + 1e-7, W),
              BeamLoad.Distributed.uniform(x + 1e-7, 288 * IN, W));
      assertThat(r.moments().greatest().value())
          .isCloseTo(uniformly(beam).moments().greatest().value(), withinPercentage(1e-9));
    }

    @Test
    void deflectionVanishesWithTheSpan() {
      for (double length = 1000; length > 0.01; length /= 10) {
        BeamResponse r =
            solve(
                Beam.uniform(
                    0,
                    length,
                    EI,
                    List.of(Beam.Support.pin(0), Beam.Support.pin(length)),
                    List.of()),
                BeamLoad.Distributed.uniform(0, length, W));
        assertThat(r.deflections(0, length).greatest().value())
            .isCloseTo(5 * W * Math.pow(length, 4) / (384 * EI), EXACT);
      }
    }

    @Test
    void fieldsAreDerivativesOfOneAnother() {
      RandomRun run = new RandomRun(31);
      BeamResponse r = run.solve();
      double h = 1e-5;
      for (double x = 0.137; x < run.beam.end() - h; x += 0.311) {
        assertThat((r.deflectionAt(x + h) - r.deflectionAt(x - h)) / (2 * h))
            .isCloseTo(r.slopeAt(x), within(1e-4 * (1e-3 + Math.abs(r.slopeAt(x)))));
        assertThat((r.momentAt(x + h) - r.momentAt(x - h)) / (2 * h))
            .isCloseTo(r.shearAt(x), within(1e-3 * (1 + Math.abs(r.shearAt(x)))));
      }
    }

    @Test
    void extremesAreNotExceededAnywhere() {
      for (long seed = 41; seed < 47; seed++) {
        RandomRun run = new RandomRun(seed);
        BeamResponse r = run.solve();
        Extremes moments = r.moments();
        Extremes deflections = r.deflections(run.beam.start(), run.beam.end());
        assertThat(r.momentAt(moments.greatest().at()))
            .isCloseTo(moments.greatest().value(), within(1e-6 * run.size()));
        for (int i = 0; i <= 5000; i++) {
          double x = run.beam.start() + (run.beam.end() - run.beam.start()) * i / 5000;
          assertThat(r.momentAt(x))
              .isBetween(
                  moments.least().value() - 1e-6 * run.size(),
                  moments.greatest().value() + 1e-6 * run.size());
          assertThat(r.deflectionAt(x))
              .isBetween(
                  deflections.least().value() - 1e-12, deflections.greatest().value() + 1e-12);
        }
      }
    }

    @Test
    void sagIsMeasuredFromTheLineBetweenTheTwoPlaces() {
      List<Beam.Support> supports =
          List.of(new Beam.Support(0, 5e4), new Beam.Support(144 * IN, 9e4));
      BeamResponse soft = uniformly(Beam.uniform(0, 144 * IN, EI, supports, List.of()));
      BeamResponse.Span span = soft.spans().get(0);
      // Closed form, recomputed; the supports' give adds a straight line only
      assertThat(span.sags().greatest().value() / IN).isCloseTo(0.8748, TENTH);
      assertThat(span.deflections().greatest().value())
          .isGreaterThan(span.sags().greatest().value() + 0.01);
    }

    @Test
    void shearJumpsByTheReactionAtASupport() {
      BeamResponse r = uniformly(inches(0, 288, at(0, 144, 288)));
      double jump = r.shearAt(144 * IN) - r.shearBefore(144 * IN);
      assertThat(jump).isCloseTo(r.reactions().get(1).force(), EXACT);
      assertThat(r.shears(0, 288 * IN).greatest().value()).isCloseTo(r.shearAt(144 * IN), EXACT);
    }

    @Test
    void askingOffTheBeamIsAnError() {
      BeamResponse r = uniformly(inches(0, 144, at(0, 144)));
      assertThatThrownBy(() -> r.momentAt(-0.001)).isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(() -> r.deflections(2, 1)).isInstanceOf(IllegalArgumentException.class);
    }
  }
}
