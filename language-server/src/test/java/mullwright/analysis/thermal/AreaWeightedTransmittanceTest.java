package mullwright.analysis.thermal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import mullwright.analysis.OutsideCheck;
import mullwright.analysis.thermal.AreaWeightedTransmittance.Lite;
import mullwright.analysis.thermal.AreaWeightedTransmittance.Transmittance;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

public class AreaWeightedTransmittanceTest {
  private static Transmittance solve(Lite lite) {
    return OutsideCheck.solved(AreaWeightedTransmittance.solve(lite));
  }

  public static List<OutsideCheck> checks() {
    Transmittance found = solve(new Lite(2, 2, 0.0635, 5.0, 2.0, 1.6));
    return List.of(
        // handbook CHECK 14b
        check("frame area", found.frameArea(), 0.49187),
        check("edge area", found.edgeArea(), 0.45961),
        check("centre area", found.centreArea(), 3.04852),
        check("transmittance", found.transmittance(), 2.0641),
        check("transmittance in Btu/(h·ft²·°F)", found.transmittance() / 5.678263, 0.3635));
  }

  private static OutsideCheck check(String what, double computed, double expected) {
    return new OutsideCheck(what, computed, expected, 0.0002, "NFRC 100 weighting, recomputed");
  }

  @Nested
  class FromOutside {
    @ParameterizedTest
    @MethodSource("mullwright.analysis.thermal.AreaWeightedTransmittanceTest#checks")
    void ratingSize(OutsideCheck check) {
      check.hold();
    }
  }

  @Nested
  class Contract {
    @Test
    void areasAddUpAndSidesMayChangePlaces() {
      Transmittance found = solve(new Lite(1.4, 2.2, 0.05, 4, 2, 1.5));
      assertThat(found.frameArea() + found.edgeArea() + found.centreArea())
          .isCloseTo(1.4 * 2.2, within(1e-12));
      assertThat(solve(new Lite(2.2, 1.4, 0.05, 4, 2, 1.5)).transmittance())
          .isCloseTo(found.transmittance(), within(1e-12));
    }

    @Test
    void largerLitesApproachTheCentreOfGlass() {
      double before = Double.POSITIVE_INFINITY;
      for (double side = 0.5; side < 6; side += 0.5) {
        double now = solve(new Lite(side, side, 0.06, 5, 2, 1.6)).transmittance();
        assertThat(now).isLessThan(before).isGreaterThan(1.6);
        before = now;
      }
    }

    @Test
    void refusesWhereTheBandsMeet() {
      OutsideCheck.refused(
          AreaWeightedTransmittance.solve(new Lite(0.2, 1, 0.05, 5, 2, 1.6)), "visible glass");
      OutsideCheck.refused(
          AreaWeightedTransmittance.solve(new Lite(1, 1, 0.05, 0, 2, 1.6)),
          "thermal transmittance of the frame");
    }
  }

  @Nested
  class Unchanged {
    // Own value: ask a human before editing it.
    @Test
    void ownValue() {
      assertThat(solve(new Lite(1.4, 2.2, 0.05, 4, 2, 1.5)).transmittance())
          .isCloseTo(1.8515699675324677, within(1e-9));
    }
  }
}
