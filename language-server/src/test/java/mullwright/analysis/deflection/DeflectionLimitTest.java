package mullwright.analysis.deflection;

import static mullwright.analysis.Outcomes.refused;
import static mullwright.analysis.Outcomes.solved;
import static mullwright.analysis.UsUnits.IN;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.function.DoubleFunction;
import mullwright.analysis.Outcome;
import mullwright.analysis.deflection.GlassEdgeLimit.Edition;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DeflectionLimitTest {
  private static final Percentage TENTH = withinPercentage(0.1);

  /** Every limit, for the contract all of them keep. */
  enum Method {
    TIR_A11(TirA11Limit::solve),
    GLASS_EDGE(edge -> GlassEdgeLimit.solve(edge, Edition.RECENT)),
    GLASS_EDGE_OLDER(edge -> GlassEdgeLimit.solve(edge, Edition.OLDER)),
    EN_13830(En13830Limit::solve),
    DEAD_LOAD(DeadLoadLimit::solve),
    EN_13830_DEAD_LOAD(En13830DeadLoadLimit::solve);

    private final DoubleFunction<Outcome<DeflectionLimit>> method;

    Method(DoubleFunction<Outcome<DeflectionLimit>> method) {
      this.method = method;
    }

    Outcome<DeflectionLimit> solve(double span) {
      return method.apply(span);
    }
  }

  @Nested
  class FromOutside {

    // AAMA TIR-A11, clause from memory; values recomputed
    @ParameterizedTest
    @CsvSource({"144, 0.8229", "162, 0.9257", "168, 0.9500", "216, 1.1500"})
    void memberUnderWind(double inches, double expected) {
      assertThat(solved(TirA11Limit.solve(inches * IN)).limit() / IN).isCloseTo(expected, TENTH);
      // IBC 2403.3, recent editions: the same two limits
      assertThat(solved(GlassEdgeLimit.solve(inches * IN, Edition.RECENT)).limit() / IN)
          .isCloseTo(expected, TENTH);
    }

    @Test
    void jumpAtThirteenFeetSix() {
      // Recomputed: L/175 gives 0.9257, L/240 + 1/4 gives 0.9250
      double below = solved(TirA11Limit.solve(162 * IN)).limit();
      double above = solved(TirA11Limit.solve(162 * IN + 1e-9)).limit();
      assertThat((below - above) / IN).isCloseTo(0.0007, within(0.00005));
    }

    @Test
    void simpleSpanFailsItsLimit() {
      // Closed form, recomputed: 0.8748 in over 12 ft against 0.8229 in
      assertThat(solved(TirA11Limit.solve(144 * IN)).utilisation(0.8748 * IN))
          .isCloseTo(0.8748 / 0.8229, TENTH)
          .isGreaterThan(1);
    }

    // IBC 2403.3, older editions, from memory: L/175, at most 3/4 in
    @ParameterizedTest
    @CsvSource({"120, 0.6857", "131.25, 0.75", "144, 0.75"})
    void olderGlassEdge(double inches, double expected) {
      assertThat(solved(GlassEdgeLimit.solve(inches * IN, Edition.OLDER)).limit() / IN)
          .isCloseTo(expected, TENTH);
    }

    // EN 13830:2015, from memory
    @ParameterizedTest
    @CsvSource({"3000, 15.0", "3657.6, 17.19", "7500, 30.0", "9000, 36.0"})
    void europeanMember(double millimetres, double expected) {
      assertThat(solved(En13830Limit.solve(millimetres / 1000)).limit() * 1000)
          .isCloseTo(expected, TENTH);
    }

    // Common practice: L/360, at most 1/8 in
    @ParameterizedTest
    @CsvSource({"36, 0.1", "60, 0.125"})
    void sagUnderGlass(double inches, double expected) {
      assertThat(solved(DeadLoadLimit.solve(inches * IN)).limit() / IN).isCloseTo(expected, TENTH);
    }

    // EN 13830, from memory: L/500, at most 3 mm
    @ParameterizedTest
    @CsvSource({"1000, 2.0", "1500, 3.0", "1800, 3.0"})
    void europeanSagUnderGlass(double millimetres, double expected) {
      assertThat(solved(En13830DeadLoadLimit.solve(millimetres / 1000)).limit() * 1000)
          .isCloseTo(expected, TENTH);
    }
  }

  @Nested
  class Contract {

    @ParameterizedTest
    @EnumSource
    void vanishesWithTheSpanAndNeverFalls(Method method) {
      assertThat(solved(method.solve(1e-6)).limit()).isLessThan(1e-8);
      double before = 0;
      for (int millimetres = 1; millimetres < 12_000; millimetres += 7) {
        double limit = solved(method.solve(millimetres / 1000.0)).limit();
        // The only step down is that of 0.0007 in at 13'-6".
        assertThat(limit).isGreaterThanOrEqualTo(before - 0.00072 * IN);
        before = limit;
      }
    }

    @ParameterizedTest
    @EnumSource
    void namesItsSourceAndItsSpan(Method method) {
      DeflectionLimit limit = solved(method.solve(2.5));
      assertThat(limit.span()).isEqualTo(2.5);
      assertThat(limit.rule().source()).isNotBlank();
    }

    @ParameterizedTest
    @EnumSource
    void refusesWhatIsNoSpan(Method method) {
      assertThat(refused(method.solve(0))).contains("0 m");
      assertThat(refused(method.solve(Double.NaN))).contains("NaN m");
    }

    @Test
    void europeanBranchesMeet() {
      assertThat(solved(En13830Limit.solve(3 + 1e-12)).limit()).isCloseTo(0.015, within(1e-9));
      assertThat(solved(En13830Limit.solve(7.5 - 1e-12)).limit()).isCloseTo(0.030, within(1e-9));
    }

    @Test
    void bothDirectionsCountAlike() {
      DeflectionLimit limit = solved(TirA11Limit.solve(3.5));
      assertThat(limit.utilisation(-0.01)).isEqualTo(limit.utilisation(0.01));
    }

    @Test
    void branchThatGovernsIsNamed() {
      assertThat(solved(TirA11Limit.solve(4)).rule()).isEqualTo(TirA11Limit.SHORT_SPAN);
      assertThat(solved(TirA11Limit.solve(4.2)).rule()).isEqualTo(TirA11Limit.LONG_SPAN);
      assertThat(solved(DeadLoadLimit.solve(2)).rule()).isEqualTo(DeadLoadLimit.LONG_SPAN);
    }
  }
}
