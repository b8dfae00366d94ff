package mullwright.analysis.beam;

import static mullwright.analysis.UsUnits.IN;
import static mullwright.analysis.UsUnits.LB;
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
import static mullwright.analysis.beam.BeamFixtures.solve;
import static mullwright.analysis.beam.BeamFixtures.uniformly;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HingedBeamTest {
  private static final Percentage TENTH = withinPercentage(0.1);
  private static final Percentage EXACT = withinPercentage(1e-7);

  @Nested
  class FromOutside {

    @Test
    void simpleSpan() {
      BeamResponse r = uniformly(inches(0, 144, at(0, 144)));
      // Closed form, recomputed
      assertThat(poundInches(r.moments().greatest().value())).isCloseTo(32_400, TENTH);
      assertThat(r.moments().greatest().at() / IN).isCloseTo(72, TENTH);
      assertThat(pounds(r)[0]).isCloseTo(900, TENTH);
      assertThat(r.spans().get(0).sags().largest().value() / IN).isCloseTo(0.8748, TENTH);
    }

    @Test
    void twoEqualSpans() {
      BeamResponse r = uniformly(inches(0, 288, at(0, 144, 288)));
      // Closed form, recomputed
      assertThat(poundInches(r.momentAt(144 * IN))).isCloseTo(-32_400, TENTH);
      assertThat(poundInches(r.moments().greatest().value())).isCloseTo(18_225, TENTH);
      assertThat(r.moments().greatest().at() / IN).isCloseTo(0.375 * 144, TENTH);
      assertThat(pounds(r)[0]).isCloseTo(675, TENTH);
      assertThat(pounds(r)[1]).isCloseTo(2250, TENTH);
      assertThat(pounds(r)[2]).isCloseTo(675, TENTH);
      Extremes.Extreme sag = r.spans().get(0).sags().largest();
      assertThat(sag.value() / IN).isCloseTo(0.3639, TENTH);
      assertThat(sag.at() / IN).isCloseTo(0.4215 * 144, TENTH);
    }

    @Test
    void twoUnequalSpans() {
      BeamResponse r = uniformly(inches(0, 288, at(0, 168, 288)));
      // Closed form, recomputed
      assertThat(poundInches(r.moments().least().value())).isCloseTo(-35_100, TENTH);
      assertThat(pounds(r)[0]).isCloseTo(841.07, TENTH);
      assertThat(pounds(r)[1]).isCloseTo(2301.43, TENTH);
      assertThat(pounds(r)[2]).isCloseTo(457.50, TENTH);
      assertThat(poundInches(r.moments().greatest().value())).isCloseTo(28_295.8, TENTH);
      assertThat(r.spans().get(0).sags().largest().value() / IN).isCloseTo(0.8606, TENTH);
    }

    // Closed form, recomputed; the same as published beam tables
    @ParameterizedTest
    @CsvSource({
      "1, 0.5,    0.5,    0,      0.125,  0.013021",
      "2, 0.375,  1.25,   0.125,  0.0703, 0.005416",
      "3, 0.400,  1.100,  0.1000, 0.0800, 0.00688",
      "4, 0.3929, 1.1429, 0.1071, 0.0772, 0.00646"
    })
    void equalSpans(
        int spans, double end, double next, double hogging, double sagging, double deflection) {
      List<Beam.Support> supports = new ArrayList<>();
      for (int i = 0; i <= spans; i++) {
        supports.add(Beam.Support.pin(i));
      }
      BeamResponse r =
          solve(
              Beam.uniform(0, spans, 1, supports, List.of()),
              BeamLoad.Distributed.uniform(0, spans, 1));
      // The table prints four figures.
      assertThat(r.reactions().get(0).force()).isCloseTo(end, TENTH);
      assertThat(r.reactions().get(1).force()).isCloseTo(next, TENTH);
      assertThat(-r.moments().least().value()).isCloseTo(hogging, within(0.00006));
      assertThat(r.moments().greatest().value()).isCloseTo(sagging, TENTH);
      assertThat(r.deflections(0, spans).greatest().value()).isCloseTo(deflection, TENTH);
    }

    @Test
    void fourSpansMiddleReaction() {
      BeamResponse r = uniformly(inches(0, 400, at(0, 100, 200, 300, 400)));
      // Closed form, recomputed
      assertThat(pounds(r)[2]).isCloseTo(0.9286 * 12.5 * 100, TENTH);
    }

    @Test
    void endlessRunWithASpliceAboveEachAnchor() {
      // Twenty equal floors, the middle stands for an endless run.
      double[] floors = new double[21];
      double[] splices = new double[19];
      for (int i = 0; i <= 20; i++) {
        floors[i] = 144.0 * i;
      }
      for (int i = 0; i < 19; i++) {
        splices[i] = 144.0 * (i + 1) + 24;
      }
      BeamResponse r = uniformly(inches(0, 2880, floors, splices));
      // Closed form, recomputed
      assertThat(Math.abs(r.shearAt(splices[9] * IN)) / LB).isCloseTo(600, TENTH);
      assertThat(poundInches(r.momentAt(1440 * IN))).isCloseTo(-18_000, TENTH);
      assertThat(poundInches(r.moments(1440 * IN, 1584 * IN).greatest().value()))
          .isCloseTo(14_400, TENTH);
      assertThat(pounds(r)[10]).isCloseTo(1800, TENTH);
      BeamResponse.Span span = r.spans().get(10);
      // Deflections by integrating M/EI over one period numerically, with a million steps.
      assertThat(span.sags().greatest().value() / IN).isCloseTo(0.21709, TENTH);
      assertThat(r.hinges().get(9).deflection() / IN).isCloseTo(-0.01080, TENTH);
    }

    @Test
    void finiteRunFromTheHead() {
      // Head pinned at 1008; each splice 24 above the anchor below it.
      BeamResponse r =
          uniformly(
              inches(
                  0,
                  1008,
                  at(0, 144, 288, 432, 576, 720, 864, 1008),
                  168,
                  312,
                  456,
                  600,
                  744,
                  888));
      // Closed form, recomputed
      assertThat(Math.abs(r.shearAt(888 * IN)) / LB).isCloseTo(750, TENTH);
      assertThat(Math.abs(r.shearAt(744 * IN)) / LB).isCloseTo(570, TENTH);
      assertThat(Math.abs(r.shearAt(600 * IN)) / LB).isCloseTo(606, TENTH);
      assertThat(Math.abs(r.shearAt(456 * IN)) / LB).isCloseTo(598.8, TENTH);
      assertThat(poundInches(r.momentAt(864 * IN))).isCloseTo(-21_600, TENTH);
      assertThat(poundInches(r.momentAt(720 * IN))).isCloseTo(-17_280, TENTH);
      assertThat(poundInches(r.momentAt(576 * IN))).isCloseTo(-18_144, TENTH);
      assertThat(poundInches(r.momentAt(432 * IN))).isCloseTo(-17_971.2, TENTH);
      // Sill: R0 = wL/2 - |M1|/L.
      double sill = 900 + poundInches(r.momentAt(144 * IN)) / 144;
      assertThat(pounds(r)[0]).isCloseTo(sill, TENTH);
    }

    @Test
    void twoFloorsWithOneSplice() {
      BeamResponse r = uniformly(inches(0, 288, at(0, 144, 288), 174));
      // Closed form, recomputed
      assertThat(Math.abs(r.shearAt(174 * IN)) / LB).isCloseTo(712.5, TENTH);
      assertThat(poundInches(r.momentAt(144 * IN))).isCloseTo(-27_000, TENTH);
      assertThat(poundInches(r.moments(0, 144 * IN).greatest().value()))
          .isCloseTo(20_306.25, TENTH);
      assertThat(poundInches(r.moments(144 * IN, 288 * IN).greatest().value()))
          .isCloseTo(20_306.25, TENTH);
      assertThat(pounds(r)[0]).isCloseTo(712.5, TENTH);
      assertThat(pounds(r)[1]).isCloseTo(2175, TENTH);
      assertThat(pounds(r)[2]).isCloseTo(712.5, TENTH);
      assertThat(r.spans().get(0).sags().largest().value() / IN).isCloseTo(0.4459, TENTH);
      assertThat(r.spans().get(1).sags().largest().value() / IN).isCloseTo(0.3430, TENTH);
    }

    // Special places: closed form, recomputed
    @ParameterizedTest
    @CsvSource({"0.2113249, 24, 12", "0.1464466, 16, 16"})
    void splicesAtSpecialPlaces(double share, double sagging, double hogging) {
      double[] floors = new double[31];
      double[] splices = new double[29];
      for (int i = 0; i <= 30; i++) {
        floors[i] = 144.0 * i;
      }
      for (int i = 0; i < 29; i++) {
        splices[i] = 144.0 * (i + 1 + share);
      }
      BeamResponse r = uniformly(inches(0, 4320, floors, splices));
      double wl2 = 12.5 * 144 * 144;
      double from = floors[15] * IN;
      double to = floors[16] * IN;
      assertThat(poundInches(r.moments(from, to).greatest().value()))
          .isCloseTo(wl2 / sagging, TENTH);
      assertThat(poundInches(r.momentAt(from))).isCloseTo(-wl2 / hogging, TENTH);
    }

    @Test
    void overhang() {
      // Simple span l with an overhang a, uniform load: published beam tables, from memory:
      // R1 = w(l² - a²)/2l, R2 = w(l + a)²/2l, M between = w(l + a)²(l - a)²/8l²,
      // M at R2 = -wa²/2, end deflection = wa(4a²l - l³ + 3a³)/24EI
      double l = 120;
      double a = 40;
      BeamResponse r = uniformly(inches(0, l + a, at(0, l)));
      assertThat(pounds(r)[0]).isCloseTo(12.5 * (l * l - a * a) / (2 * l), EXACT);
      assertThat(pounds(r)[1]).isCloseTo(12.5 * (l + a) * (l + a) / (2 * l), EXACT);
      assertThat(poundInches(r.moments().greatest().value()))
          .isCloseTo(12.5 * Math.pow((l + a) * (l - a), 2) / (8 * l * l), EXACT);
      assertThat(poundInches(r.momentAt(l * IN))).isCloseTo(-12.5 * a * a / 2, EXACT);
      assertThat(r.deflectionAt((l + a) * IN) / IN)
          .isCloseTo(12.5 * a * (4 * a * a * l - l * l * l + 3 * a * a * a) / (24 * 80e6), EXACT);
    }

    @Test
    void partialUniformLoad() {
      // Simple span, uniform load over b beginning a from the start, c left over: published beam
      // tables, from memory: R1 = wb(2c + b)/2l, Mmax = R1(a + R1/2w) at a + R1/w
      double l = 144;
      double a = 30;
      double b = 60;
      double c = l - a - b;
      BeamResponse r =
          solve(inches(0, l, at(0, l)), BeamLoad.Distributed.uniform(a * IN, (a + b) * IN, W));
      double r1 = 12.5 * b / (2 * l) * (2 * c + b);
      assertThat(pounds(r)[0]).isCloseTo(r1, EXACT);
      assertThat(pounds(r)[1]).isCloseTo(12.5 * b - r1, EXACT);
      assertThat(r.moments().greatest().at() / IN).isCloseTo(a + r1 / 12.5, EXACT);
      assertThat(poundInches(r.moments().greatest().value())).isCloseTo(r1 * (a + r1 / 25), EXACT);
    }

    @Test
    void loadRisingToOneEnd() {
      // Simple span, line load 0 to w: published beam tables, from memory: R1 = wl/6, R2 = wl/3,
      // M = wl²/(9 sqrt 3) at 0.5774 l, deflection 0.01304 Wl³/EI at 0.5193 l
      double l = 144;
      BeamResponse r = solve(inches(0, l, at(0, l)), new BeamLoad.Distributed(0, l * IN, 0, W));
      assertThat(pounds(r)[0]).isCloseTo(12.5 * l / 6, EXACT);
      assertThat(pounds(r)[1]).isCloseTo(12.5 * l / 3, EXACT);
      assertThat(r.moments().greatest().at() / IN).isCloseTo(0.57735 * l, TENTH);
      assertThat(poundInches(r.moments().greatest().value()))
          .isCloseTo(12.5 * l * l / (9 * Math.sqrt(3)), EXACT);
      Extremes.Extreme sag = r.deflections(0, l * IN).greatest();
      assertThat(sag.at() / IN).isCloseTo(0.5193 * l, TENTH);
      assertThat(sag.value() / IN).isCloseTo(0.01304 * (12.5 * l / 2) * l * l * l / 80e6, TENTH);
    }

    @Test
    void pointForceAnywhere() {
      // Simple span, force P at a, b = l - a: published beam tables, from memory:
      // M = Pab/l, deflection at the force Pa²b²/3EIl, greatest at sqrt(a(a + 2b)/3) for a > b
      double l = 100;
      double a = 70;
      double b = 30;
      BeamResponse r = solve(inches(0, l, at(0, l)), new BeamLoad.PointForce(a * IN, 500 * LB));
      assertThat(poundInches(r.moments().greatest().value())).isCloseTo(500 * a * b / l, EXACT);
      assertThat(r.deflectionAt(a * IN) / IN)
          .isCloseTo(500 * a * a * b * b / (3 * 80e6 * l), EXACT);
      Extremes.Extreme sag = r.deflections(0, l * IN).greatest();
      assertThat(sag.at() / IN).isCloseTo(Math.sqrt(a * (a + 2 * b) / 3), EXACT);
      assertThat(sag.value() / IN)
          .isCloseTo(
              500 * a * b * (a + 2 * b) * Math.sqrt(3 * a * (a + 2 * b)) / (27 * 80e6 * l), EXACT);
    }

    @Test
    void coupleAtTheEnd() {
      // Simple span, couple M at one end: textbook, from memory: R = M/l both ways, slopes
      // Ml/3EI and Ml/6EI, greatest deflection Ml²/(9 sqrt 3 EI)
      double l = 100;
      double m = 8000;
      BeamResponse r = solve(inches(0, l, at(0, l)), new BeamLoad.Couple(0, m * LB * IN));
      assertThat(pounds(r)[0]).isCloseTo(-m / l, EXACT);
      assertThat(pounds(r)[1]).isCloseTo(m / l, EXACT);
      assertThat(poundInches(r.momentAt(0))).isCloseTo(m, EXACT);
      assertThat(r.slopeAt(0)).isCloseTo(m * l / (3 * 80e6), EXACT);
      assertThat(r.slopeAt(l * IN)).isCloseTo(-m * l / (6 * 80e6), EXACT);
      assertThat(r.deflections(0, l * IN).greatest().value() / IN)
          .isCloseTo(m * l * l / (9 * Math.sqrt(3) * 80e6), EXACT);
    }

    @Test
    void forceOnAHingedLength() {
      // By hand: supports 0 and 100, hinge 130, support 180; force 300 at 155, halfway from hinge
      // to the last support. The hung length gives 150 to the hinge and 150 to the last support;
      // the other sees 150 at 30 past its support: R2 = 150 * 130/100 = 195, R1 = -45.
      BeamResponse r =
          solve(inches(0, 180, at(0, 100, 180), 130), new BeamLoad.PointForce(155 * IN, 300 * LB));
      assertThat(pounds(r)).containsExactly(new double[] {-45, 195, 150}, within(1e-6));
      assertThat(poundInches(r.momentAt(100 * IN))).isCloseTo(-4500, EXACT);
      assertThat(poundInches(r.momentAt(155 * IN))).isCloseTo(150 * 25, EXACT);
      // Cantilever end of an overhang: P a²(l + a)/3EI
      assertThat(r.hinges().get(0).deflection() / IN)
          .isCloseTo(150 * 30 * 30 * (100 + 30) / (3 * 80e6), EXACT);
    }

    @Test
    void reinforcedMiddle() {
      // Simple span of 100 with a point force 400 in the middle, rigidity doubled over the middle
      // half. By hand (moment areas): v = P l³/48EI * (1/8 + 7/16), since the outer quarters carry
      // (1/2)³ of the simple-span deflection and the rest is halved.
      List<Beam.Stretch> stretches =
          List.of(new Beam.Stretch(0, 100 * IN, EI), new Beam.Stretch(25 * IN, 75 * IN, EI));
      BeamResponse r =
          solve(
              new Beam(0, 100 * IN, stretches, pins(0, 100), List.of()),
              new BeamLoad.PointForce(50 * IN, 400 * LB));
      assertThat(r.deflectionAt(50 * IN) / IN)
          .isCloseTo(400 * 1e6 / (48 * 80e6) * (0.125 + 0.4375), EXACT);
    }

    @Test
    void supportThatGives() {
      // By hand: two equal spans, middle spring k. Without it the middle sinks 5wL⁴/384EI, L both
      // spans; a force R there lifts it RL³/48EI; so R = (5wL⁴/384EI)/(L³/48EI + 1/k).
      double l = 200;
      double k = 3000;
      List<Beam.Support> supports =
          List.of(
              Beam.Support.pin(0),
              new Beam.Support(l / 2 * IN, k * LB / IN),
              Beam.Support.pin(l * IN));
      BeamResponse r = uniformly(Beam.uniform(0, l * IN, EI, supports, List.of()));
      double free = 5 * 12.5 * Math.pow(l, 4) / (384 * 80e6);
      double expected = free / (Math.pow(l, 3) / (48 * 80e6) + 1 / k);
      assertThat(pounds(r)[1]).isCloseTo(expected, EXACT);
      assertThat(r.deflectionAt(l / 2 * IN) / IN).isCloseTo(expected / k, EXACT);
    }
  }

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

  /** Own values, held tight: ask a human before editing one. */
  @Nested
  class Unchanged {

    @Test
    void aRunOfUnequalFloorsUnderMixedLoads() {
      RandomRun run = new RandomRun(7);
      BeamResponse r = run.solve();
      Percentage tight = withinPercentage(1e-9);
      assertThat(r.moments().greatest().value()).isCloseTo(2858.7718202532274, tight);
      assertThat(r.moments().greatest().at()).isCloseTo(12.30670620556876, tight);
      assertThat(r.moments().least().value()).isCloseTo(-8093.5469405015765, tight);
      Extremes deflections = r.deflections(0, run.beam.end());
      assertThat(deflections.greatest().value()).isCloseTo(0.2712570049738857, tight);
      assertThat(deflections.least().value()).isCloseTo(-0.01816386962818732, tight);
      assertThat(deflections.least().at()).isCloseTo(25.464887180224483, tight);
      assertThat(r.reactions().get(3).force()).isCloseTo(11734.056786342975, tight);
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

  /**
   * A run of unequal floors with a splice above each anchor and mixed loads; the same each time.
   */
  private static final class RandomRun {
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
}
