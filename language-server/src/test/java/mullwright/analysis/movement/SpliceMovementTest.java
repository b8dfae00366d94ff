package mullwright.analysis.movement;

import static mullwright.analysis.Outcomes.refused;
import static mullwright.analysis.Outcomes.solved;
import static mullwright.analysis.UsUnits.DEG_F;
import static mullwright.analysis.UsUnits.IN;
import static mullwright.analysis.UsUnits.PSI;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpliceMovementTest {
  private static final Percentage TENTH = withinPercentage(0.1);
  private static final double ALUMINUM = Expansion.ALUMINUM.coefficient();

  /** Metal from −20 °F to 160 °F, set at 70 °F, as kelvins above 0 °F. */
  private static final MetalTemperature METAL =
      new MetalTemperature(-20 * DEG_F, 160 * DEG_F, 70 * DEG_F);

  private static SpliceMovement storey(double slabDown) {
    return new SpliceMovement(ALUMINUM, 144 * IN, METAL, slabDown, 0, 0);
  }

  private static SpliceGap.Result gap(SpliceMovement movement) {
    return solved(SpliceGap.solve(new SpliceGap.Input(movement, IN / 16, IN / 16)));
  }

  @Nested
  class FromOutside {

    @Test
    void freeExpansion() {
      // Closed form, recomputed: 13.1e-6 × 144 in × 180 °F
      assertThat(
              solved(
                          ThermalMovement.solve(
                              new ThermalMovement.Input(ALUMINUM, 144 * IN, 180 * DEG_F)))
                      .change()
                  / IN)
          .isCloseTo(0.3396, TENTH);
      // Closed form, recomputed: 23.6e-6 × 3657.6 mm × 100 °C
      assertThat(
              solved(ThermalMovement.solve(new ThermalMovement.Input(23.6e-6, 3.6576, 100)))
                  .change())
          .isCloseTo(8.632e-3, TENTH);
    }

    // Handbooks, from memory: micrometres a metre and kelvin
    @ParameterizedTest
    @CsvSource({"ALUMINUM, 23.6", "STEEL, 11.7", "GLASS, 9.0"})
    void coefficients(Expansion material, double expected) {
      assertThat(material.coefficient() * 1e6).isCloseTo(expected, TENTH);
    }

    @Test
    void gapOfOneStorey() {
      SpliceGap.Result r = gap(storey(0.25 * IN));
      // Closed form, recomputed
      assertThat(r.thermalClosing() / IN).isCloseTo(0.1698, TENTH);
      assertThat(r.thermalOpening() / IN).isCloseTo(0.1698, TENTH);
      assertThat(r.needed() / IN).isCloseTo(0.5448, TENTH);
    }

    // Closed form, recomputed; joint width by ASTM C1472, from memory
    @ParameterizedTest
    @CsvSource({"0.50, 0.9021", "0.25, 1.7416"})
    void sameMovementInASealedJoint(double movementClass, double expected) {
      SpliceMovement movement = storey(0.25 * IN);
      SealedJoint.Result r =
          solved(
              SealedJoint.solve(
                  new SealedJoint.Input(
                      movement.closing(),
                      movement.opening(),
                      movementClass,
                      movementClass,
                      IN / 16)));
      assertThat(r.needed() / IN).isCloseTo(expected, TENTH);
    }

    @Test
    void perimeterJoint() {
      // CHECK 12b, closed form, recomputed: X 0.25 in, T 0.125 in
      SealedJoint.Result r =
          solved(
              SealedJoint.solve(
                  new SealedJoint.Input(0.25 * IN, 0.25 * IN, 0.25, 0.50, 0.125 * IN)));
      assertThat(r.forClosing() / IN).isCloseTo(1.125, TENTH);
      assertThat(r.forOpening() / IN).isCloseTo(0.625, TENTH);
    }

    @Test
    void restrainedLength() {
      // Closed form, recomputed: 10e6 psi × 13.1e-6 × 90 °F
      RestrainedExpansion.Result r =
          solved(
              RestrainedExpansion.solve(
                  new RestrainedExpansion.Input(10e6 * PSI, ALUMINUM, 90 * DEG_F)));
      assertThat(r.stress() / PSI).isCloseTo(11_790, TENTH);
    }

    @Test
    void placeOfNoMoment() {
      // Closed form, recomputed: 0.2113 × 144 in
      SpliceBand.Result r = solved(SpliceBand.solve(144 * IN));
      assertThat(r.best() / IN).isCloseTo(30.4, within(0.05));
      // Common practice: 0.15 to 0.25 of the span
      assertThat(r.near() / IN).isCloseTo(21.6, TENTH);
      assertThat(r.far() / IN).isCloseTo(36, TENTH);
    }

    @Test
    void slot() {
      // Common practice, worked: 1/2 + 5/8 + 5/8 + 1/4 in
      SlotLength.Result r =
          solved(
              SlotLength.solve(new SlotLength.Input(0.5 * IN, 0.625 * IN, 0.625 * IN, 0.25 * IN)));
      assertThat(r.needed() / IN).isCloseTo(2.0, TENTH);
    }

    @Test
    void headGap() {
      // By hand: 3/8 in slab + 0.085 in growth + 1/8 in tolerance
      HeadGap.Result r =
          solved(HeadGap.solve(new HeadGap.Input(0.375 * IN, 0.085 * IN, 0.125 * IN)));
      assertThat(r.needed() / IN).isCloseTo(0.585, TENTH);
    }

    @Test
    void hottestAndColdestDay() {
      // By hand from the gap above: 9/16 in set, 0.1698 in either way, slab 1/4, tolerance 1/16 in
      SpliceRange.Result r =
          solved(SpliceRange.solve(new SpliceRange.Input(0.5625 * IN, storey(0.25 * IN), IN / 16)));
      assertThat(r.hottestDay() / IN).isCloseTo(0.3927, TENTH);
      assertThat(r.coldestDay() / IN).isCloseTo(0.7323, TENTH);
      assertThat(r.least() / IN).isCloseTo(0.0802, TENTH);
      assertThat(r.greatest() / IN).isCloseTo(0.7948, TENTH);
      assertThat(r.closes()).isFalse();
    }

    @Test
    void sleeve() {
      // By hand: sleeve 10 in, 4 in fixed, gap 9/16 growing to 0.7948 in, least lap 4 in
      SleeveEngagement.Result r =
          solved(
              SleeveEngagement.solve(
                  new SleeveEngagement.Input(10 * IN, 4 * IN, 0.5625 * IN, 0.7948 * IN, 4 * IN)));
      assertThat(r.lapWhenSet() / IN).isCloseTo(5.4375, TENTH);
      assertThat(r.lapAtWidest() / IN).isCloseTo(5.2052, TENTH);
      assertThat(r.neededSleeve() / IN).isCloseTo(8.7948, TENTH);
      assertThat(r.holds()).isTrue();
    }
  }

  @Nested
  class Contract {

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.003, 0.02})
    void aGapAsNeededKeepsItsResidual(double slabDown) {
      SpliceMovement movement = new SpliceMovement(ALUMINUM, 4, METAL, slabDown, 0.001, 0.002);
      SpliceGap.Result needed =
          solved(SpliceGap.solve(new SpliceGap.Input(movement, 0.0016, 0.0024)));
      SpliceRange.Result range =
          solved(SpliceRange.solve(new SpliceRange.Input(needed.needed(), movement, 0.0016)));
      assertThat(range.least()).isCloseTo(0.0024, within(1e-15));
      SpliceRange.Result tight =
          solved(
              SpliceRange.solve(new SpliceRange.Input(needed.needed() - 0.0025, movement, 0.0016)));
      assertThat(tight.closes()).isTrue();
    }

    @Test
    void closingAndOpeningTogetherAreTheWholeRange() {
      for (double set = -20; set <= 160; set += 30) {
        SpliceMovement movement =
            new SpliceMovement(
                ALUMINUM,
                144 * IN,
                new MetalTemperature(-20 * DEG_F, 160 * DEG_F, set * DEG_F),
                0,
                0,
                0);
        assertThat((movement.thermalClosing() + movement.thermalOpening()) / IN)
            .isCloseTo(0.3396, TENTH);
      }
    }

    @Test
    void movementIsLinearInTheDistance() {
      SpliceMovement one = new SpliceMovement(ALUMINUM, 3, METAL, 0, 0, 0);
      SpliceMovement two = new SpliceMovement(ALUMINUM, 6, METAL, 0, 0, 0);
      assertThat(two.thermalClosing()).isCloseTo(2 * one.thermalClosing(), within(1e-15));
      assertThat(new SpliceMovement(ALUMINUM, 0, METAL, 0, 0, 0).closing()).isZero();
    }

    @Test
    void coolingShortens() {
      assertThat(
              solved(ThermalMovement.solve(new ThermalMovement.Input(ALUMINUM, 4, -40))).change())
          .isCloseTo(
              -solved(ThermalMovement.solve(new ThermalMovement.Input(ALUMINUM, 4, 40))).change(),
              within(1e-15));
    }

    @Test
    void sleeveLongEnoughHoldsAndAHairShorterDoesNot() {
      SleeveEngagement.Input in = new SleeveEngagement.Input(0.25, 0.1, 0.014, 0.02, 0.1);
      double needed = solved(SleeveEngagement.solve(in)).neededSleeve();
      assertThat(sleeve(needed + 1e-9).holds()).isTrue();
      assertThat(sleeve(needed - 1e-9).holds()).isFalse();
    }

    private SleeveEngagement.Result sleeve(double length) {
      return solved(
          SleeveEngagement.solve(new SleeveEngagement.Input(length, 0.1, 0.014, 0.02, 0.1)));
    }

    @Test
    void bandHoldsItsEnds() {
      SpliceBand.Result r = solved(SpliceBand.solve(4));
      assertThat(r.holds(r.near())).isTrue();
      assertThat(r.holds(r.far())).isTrue();
      assertThat(r.holds(r.best())).isTrue();
      assertThat(r.holds(r.far() + 1e-9)).isFalse();
      assertThat(r.holds(r.near() - 1e-9)).isFalse();
    }

    @Test
    void outOfRangeIsRefused() {
      MetalTemperature reversed = new MetalTemperature(340, 260, 300);
      SpliceMovement cold = new SpliceMovement(ALUMINUM, 4, reversed, 0, 0, 0);
      assertThat(refused(SpliceGap.solve(new SpliceGap.Input(cold, 0, 0))))
          .isEqualTo("hottest metal temperature is 260 K; it must be above the coldest one.");
      MetalTemperature outside = new MetalTemperature(260, 340, 350);
      SpliceMovement hot = new SpliceMovement(ALUMINUM, 4, outside, 0, 0, 0);
      assertThat(refused(SpliceRange.solve(new SpliceRange.Input(0.01, hot, 0))))
          .startsWith("metal temperature when set is 350 K");
      assertThat(refused(SealedJoint.solve(new SealedJoint.Input(0.01, 0.01, 0, 0.5, 0))))
          .startsWith("compression class of the sealant is 0");
      assertThat(refused(SlotLength.solve(new SlotLength.Input(0, 0.01, 0.01, 0))))
          .startsWith("bolt diameter is 0 m");
      assertThat(refused(HeadGap.solve(new HeadGap.Input(-0.001, 0, 0))))
          .startsWith("slab deflection is -0.001 m");
      assertThat(refused(SpliceBand.solve(0))).startsWith("storey span is 0 m");
      assertThat(
              refused(
                  SleeveEngagement.solve(new SleeveEngagement.Input(0.3, 0.1, 0.02, 0.01, 0.1))))
          .startsWith("greatest gap is 0.01 m");
      assertThat(refused(ThermalMovement.solve(new ThermalMovement.Input(ALUMINUM, -1, 10))))
          .startsWith("length is -1 m");
      assertThat(refused(RestrainedExpansion.solve(new RestrainedExpansion.Input(0, ALUMINUM, 1))))
          .startsWith("modulus of elasticity is 0 Pa");
    }
  }
}
