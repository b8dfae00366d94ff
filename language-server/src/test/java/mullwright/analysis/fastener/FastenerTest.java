package mullwright.analysis.fastener;

import static mullwright.analysis.Outcomes.refused;
import static mullwright.analysis.Outcomes.solved;
import static mullwright.analysis.UsUnits.IN;
import static mullwright.analysis.UsUnits.KIP;
import static mullwright.analysis.UsUnits.KSI;
import static mullwright.analysis.UsUnits.LB;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FastenerTest {
  private static final Percentage TENTH = withinPercentage(0.1);

  private static BearingStrength.Result bearing(BearingStrength.Kind kind, double edge) {
    return solved(
        BearingStrength.solve(
            new BearingStrength.Input(kind, 0.25 * IN, 0.125 * IN, edge * IN, 30 * KSI)));
  }

  @Nested
  class FromOutside {

    @Test
    void bearingWithAmpleEdge() {
      // Aluminum Design Manual, sections J.3 and J.5, from memory; values recomputed
      BearingStrength.Result bolt = bearing(BearingStrength.Kind.BOLT, 0.75);
      assertThat(bolt.nominal() / KIP).isCloseTo(1.875, TENTH);
      assertThat(bolt.allowable() / KIP).isCloseTo(0.962, TENTH);
      BearingStrength.Result screw = bearing(BearingStrength.Kind.TAPPING_SCREW, 0.75);
      assertThat(screw.allowable() / KIP).isCloseTo(0.625, TENTH);
    }

    @Test
    void bearingNearAnEdge() {
      // Aluminum Design Manual, section J.5, from memory; values recomputed
      assertThat(bearing(BearingStrength.Kind.TAPPING_SCREW, 0.40).allowable() / KIP)
          .isCloseTo(0.500, TENTH);
    }

    @Test
    void tiltingOfANumberTenScrew() {
      // CHECK 11b, Aluminum Design Manual, section J.5, from memory; value recomputed
      ScrewStrength.Result r =
          solved(
              ScrewStrength.solve(
                  new ScrewStrength.Tilting(0.190 * IN, 0.125 * IN, 0.125 * IN, 22 * KSI)));
      assertThat(r.allowable() / KIP).isCloseTo(0.593, TENTH);
    }

    @Test
    void pullOut() {
      // CHECK 11c, Aluminum Design Manual, section J.5, from memory; value recomputed
      ScrewStrength.Result r =
          solved(
              ScrewStrength.solve(new ScrewStrength.PullOut(0.25 * IN, 0.125 * IN, 25 * KSI, 1.2)));
      assertThat(r.allowable() / LB).isCloseTo(312.5, TENTH);
    }

    @Test
    void pullOnAPlateScrew() {
      // CHECK 12a, closed form, recomputed: 40 psf on 5 ft; a plate of 69.5 in with ends of 2 in
      // has 9 screws, 8.1875 in apart; at 9 in the pull would be 150 lb
      double lineLoad = 40 * 5 * LB / 0.3048;
      double[][] rows = {{8.1875, 136.5}, {9, 150}};
      for (double[] row : rows) {
        double pull = solved(PlateScrewLoad.solve(new PlateScrewLoad.Input(lineLoad, row[0] * IN)));
        assertThat(pull / LB).isCloseTo(row[1], TENTH);
      }
      assertThat(refused(PlateScrewLoad.solve(new PlateScrewLoad.Input(lineLoad, 0))))
          .startsWith("spacing of the screws is 0 m");
    }

    @Test
    void pullOver() {
      // Aluminum Design Manual, section J.5, from memory; by hand: 1.0 × 0.08 × 30 × (0.5 − 0.2)
      ScrewStrength.Result r =
          solved(
              ScrewStrength.solve(
                  new ScrewStrength.PullOver(0.5 * IN, 0.2 * IN, 0.08 * IN, 30 * KSI, 1.0)));
      assertThat(r.nominal() / KIP).isCloseTo(0.72, TENTH);
      assertThat(r.allowable() / KIP).isCloseTo(0.24, TENTH);
    }

    // Aluminum Design Manual, section J.3, from memory
    @ParameterizedTest
    @CsvSource({"0.25, 0.375, 0.5, 0.625, 0.3125", "0.5, 0.75, 1.0, 1.25, 0.5625"})
    void holes(double diameter, double edge, double full, double spacing, double hole) {
      HoleLayout.Result r = solved(HoleLayout.solve(diameter * IN));
      assertThat(r.leastEdge() / IN).isCloseTo(edge, TENTH);
      assertThat(r.fullEdge() / IN).isCloseTo(full, TENTH);
      assertThat(r.leastSpacing() / IN).isCloseTo(spacing, TENTH);
      assertThat(r.greatestHole() / IN).isCloseTo(hole, TENTH);
    }

    @Test
    void stackOfFive() {
      // Closed form, recomputed: 1/16, 1/16, 1/8, 1/32, 1/16 in
      ToleranceStack.Result r = stack(1, IN / 16, IN / 16, IN / 8, IN / 32, IN / 16);
      assertThat(r.worst() / IN).isCloseTo(0.34375, TENTH);
      assertThat(r.statistical().orElseThrow() / IN).isCloseTo(0.16829, TENTH);
    }

    @Test
    void playOfTwoClearanceHoles() {
      // By hand: 9/16 and 5/8 in holes on a 1/2 in bolt: 1/32 + 1/16 in
      HolePair.Result r =
          solved(
              HolePair.solve(new HolePair.Input(0.5625 * IN, 0.625 * IN, 0.5 * IN, 0.0625 * IN)));
      assertThat(r.play() / IN).isCloseTo(0.09375, TENTH);
      assertThat(r.left() / IN).isCloseTo(0.03125, TENTH);
      assertThat(r.passes()).isTrue();
    }
  }

  private static ToleranceStack.Result stack(double factor, Double... tolerances) {
    return solved(ToleranceStack.solve(new ToleranceStack.Input(List.of(tolerances), factor)));
  }

  @Nested
  class Contract {

    @Test
    void bearingGrowsWithTheEdgeUpToTwoDiameters() {
      double before = 0;
      for (double edge = 0.375; edge <= 0.5; edge += 0.0125) {
        double now = bearing(BearingStrength.Kind.BOLT, edge).nominal();
        assertThat(now).isGreaterThan(before);
        before = now;
      }
      assertThat(bearing(BearingStrength.Kind.BOLT, 5).nominal())
          .isCloseTo(bearing(BearingStrength.Kind.BOLT, 0.5).nominal(), within(1e-6));
    }

    @Test
    void statisticalSumIsNeverAboveTheWorstAndNeedsThreeTerms() {
      ToleranceStack.Result r = stack(1, 0.001, 0.002, 0.0005);
      assertThat(r.statistical().orElseThrow()).isLessThan(r.worst());
      assertThat(stack(1, 0.001, 0.002).statistical()).isEmpty();
      assertThat(stack(1).worst()).isZero();
      assertThat(stack(1.5, 0.001, 0.002, 0.0005).statistical().orElseThrow())
          .isCloseTo(1.5 * r.statistical().orElseThrow(), within(1e-15));
    }

    @Test
    void holesTooFarApartDoNotPass() {
      HolePair.Result r = solved(HolePair.solve(new HolePair.Input(0.014, 0.014, 0.012, 0.0021)));
      assertThat(r.passes()).isFalse();
      assertThat(r.left()).isCloseTo(-0.0001, within(1e-12));
    }

    @Test
    void outOfRangeIsRefused() {
      assertThat(
              refused(
                  BearingStrength.solve(
                      new BearingStrength.Input(
                          BearingStrength.Kind.BOLT, 0.006, 0.003, 0.008, 2e8))))
          .startsWith("edge distance is 0.008 m");
      assertThat(
              refused(ScrewStrength.solve(new ScrewStrength.Tilting(0.005, 0.002, 0.003, 1.5e8))))
          .startsWith("thickness of the far part is 0.003 m");
      assertThat(
              refused(
                  ScrewStrength.solve(new ScrewStrength.PullOut(0.25 * IN, 0.2 * IN, 1e8, 1.2))))
          .startsWith("engaged length is 0.00508 m");
      assertThat(
              refused(ScrewStrength.solve(new ScrewStrength.PullOver(0.005, 0.006, 0.002, 2e8, 1))))
          .startsWith("washer diameter is 0.005 m");
      assertThat(refused(HoleLayout.solve(0))).startsWith("fastener diameter is 0 m");
      assertThat(refused(HolePair.solve(new HolePair.Input(0.011, 0.014, 0.012, 0))))
          .startsWith("hole diameter is 0.011 m");
      assertThat(refused(ToleranceStack.solve(new ToleranceStack.Input(List.of(0.001, -0.001), 1))))
          .startsWith("tolerance is -0.001 m");
      assertThat(refused(ToleranceStack.solve(new ToleranceStack.Input(List.of(0.001), 2))))
          .startsWith("centring factor is 2");
    }
  }
}
