package mullwright.analysis.glass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mullwright.analysis.OutsideCheck;
import mullwright.analysis.glass.InsulatingUnitSharing.Shares;
import mullwright.analysis.glass.InsulatingUnitSharing.Unit;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

public class InsulatingUnitSharingTest {
  private static final String CLOSED = "EN 16612 annex C, recomputed";

  private static Shares solve(Unit unit) {
    return OutsideCheck.solved(InsulatingUnitSharing.solve(unit));
  }

  public static List<OutsideCheck> checks() {
    Shares large = solve(new Unit(1.2, 1.5, 0.006, 0.006, 0.016));
    Shares small = solve(new Unit(0.4, 0.6, 0.006, 0.006, 0.016));
    return List.of(
        // handbook CHECK 7.10c
        check("a* of 1200 × 1500", large.characteristicLength(), 0.4524, 0.001),
        check("φ of 1200 × 1500", large.unitFactor(), 0.0198, 0.003),
        check("share of the loaded lite of 1200 × 1500", large.loaded(), 0.510, 0.001),
        check("share of the other lite of 1200 × 1500", large.other(), 0.490, 0.001),
        check("a* of 400 × 600", small.characteristicLength(), 0.4243, 0.001),
        check("φ of 400 × 600", small.unitFactor(), 0.5587, 0.001),
        check("share of the loaded lite of 400 × 600", small.loaded(), 0.779, 0.001),
        check("share of the other lite of 400 × 600", small.other(), 0.221, 0.002));
  }

  private static OutsideCheck check(String what, double computed, double expected, double within) {
    return new OutsideCheck(what, computed, expected, within, CLOSED);
  }

  @Nested
  class FromOutside {
    @ParameterizedTest
    @MethodSource("mullwright.analysis.glass.InsulatingUnitSharingTest#checks")
    void closedForms(OutsideCheck check) {
      check.hold();
    }
  }

  @Nested
  class Contract {
    @Test
    void sharesAddUp() {
      for (double side = 0.2; side < 3; side += 0.2) {
        Shares shares = solve(new Unit(side, side * 1.3, 0.006, 0.008, 0.012));
        assertThat(shares.loaded() + shares.other()).isCloseTo(1, within(1e-12));
      }
    }

    @Test
    void largeUnitsShareByStiffnessAsAstmHasIt() {
      Shares shares = solve(new Unit(4, 4, 0.00556, 0.00742, 0.012));
      LoadShare.Factors factors =
          OutsideCheck.solved(LoadShare.solve(new LoadShare.Unit(0.00556, 0.00742)));
      assertThat(shares.loaded()).isCloseTo(1 / factors.first(), within(0.001));
      assertThat(shares.other()).isCloseTo(1 / factors.second(), within(0.001));
    }

    @Test
    void smallStiffUnitsLeaveTheLoadWhereItFalls() {
      assertThat(solve(new Unit(0.1, 0.1, 0.01, 0.01, 0.02)).loaded()).isGreaterThan(0.99);
    }

    @Test
    void widerCavitiesPassLessOn() {
      double before = 1;
      for (double cavity = 0.006; cavity < 0.03; cavity += 0.004) {
        double other = solve(new Unit(0.6, 0.9, 0.006, 0.006, cavity)).other();
        assertThat(other).isLessThan(before);
        before = other;
      }
    }

    @Test
    void refusesBeyondItsRange() {
      OutsideCheck.refused(
          InsulatingUnitSharing.solve(new Unit(1, 1, 0.006, 0.006, 0)), "cavity width");
      OutsideCheck.refused(
          InsulatingUnitSharing.solve(new Unit(3, 0.3, 0.006, 0.006, 0.012)),
          "short side over long side");
    }
  }

  @Nested
  class Unchanged {
    // Own value: ask a human before editing it.
    @Test
    void ownValue() {
      assertThat(solve(new Unit(0.8, 1.0, 0.006, 0.008, 0.012)).loaded())
          .isCloseTo(0.3652044096843809, within(1e-10));
    }
  }
}
