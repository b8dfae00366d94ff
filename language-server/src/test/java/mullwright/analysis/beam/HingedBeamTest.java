package mullwright.analysis.beam;

import static mullwright.analysis.UsUnits.IN;
import static mullwright.analysis.UsUnits.LB;
import static mullwright.analysis.beam.BeamFixtures.EI;
import static mullwright.analysis.beam.BeamFixtures.W;
import static mullwright.analysis.beam.BeamFixtures.at;
import static mullwright.analysis.beam.BeamFixtures.inches;
import static mullwright.analysis.beam.BeamFixtures.pins;
import static mullwright.analysis.beam.BeamFixtures.poundInches;
import static mullwright.analysis.beam.BeamFixtures.pounds;
import static mullwright.analysis.beam.BeamFixtures.solve;
import static mullwright.analysis.beam.BeamFixtures.uniformly;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds {@link HingedBeam} against closed forms and beam tables, and its own values still. */
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
}
