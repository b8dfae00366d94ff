package mullwright.analysis.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import mullwright.analysis.OutsideCheck;
import mullwright.analysis.wind.VelocityPressure.Pressure;
import mullwright.analysis.wind.VelocityPressure.Site;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

public class VelocityPressureTest {
  static final double FOOT = 0.3048;
  static final double PSF = 47.88026;
  static final double MPH = 0.44704;

  static Pressure solve(Site site) {
    return OutsideCheck.solved(VelocityPressure.solve(site));
  }

  static Pressure at(WindEdition edition, Exposure exposure, double feet) {
    return solve(new Site(edition, exposure, feet * FOOT, 115 * MPH, 1, 0.85, 1, 0));
  }

  public static List<OutsideCheck> checks() {
    Pressure fifty = at(WindEdition.ASCE_7_16, Exposure.C, 50);
    Pressure later = at(WindEdition.ASCE_7_22, Exposure.C, 50);
    List<OutsideCheck> handbook =
        List.of(
            // handbook CHECK 10a, 10b, 10c
            check("K at 50 ft, C, 7-16", fifty.exposureCoefficient(), 1.0938),
            check("q at 50 ft, C, 7-16", fifty.pressure() / PSF, 31.48),
            check(
                "q at 200 ft", at(WindEdition.ASCE_7_16, Exposure.C, 200).pressure() / PSF, 42.14),
            check(
                "q at 100 ft", at(WindEdition.ASCE_7_16, Exposure.C, 100).pressure() / PSF, 36.42),
            check(
                "K at 33 ft, C, 7-22",
                at(WindEdition.ASCE_7_22, Exposure.C, 33).exposureCoefficient(),
                1.000),
            check("K at 50 ft, C, 7-22", later.exposureCoefficient(), 1.0882),
            check("K_d·q at 50 ft, C, 7-22", later.pressure() / PSF, 31.32));
    List<OutsideCheck> checks = new ArrayList<>(handbook);
    for (double[] row : ExposureCoefficients.TABLE) {
      for (Exposure exposure : Exposure.values()) {
        String what = "K at " + (int) row[0] + " ft, " + exposure;
        checks.add(table(what, exposure, row[0], row[exposure.ordinal() + 1]));
      }
    }
    return checks;
  }

  private static OutsideCheck check(String what, double computed, double expected) {
    return new OutsideCheck(what, computed, expected, 0.001, "ASCE 7 formula, recomputed");
  }

  private static OutsideCheck table(String what, Exposure exposure, double feet, double expected) {
    return new OutsideCheck(
        what,
        at(WindEdition.ASCE_7_16, exposure, feet).exposureCoefficient(),
        expected,
        // two digits are printed, some of them cut off rather than rounded
        0.009 / expected,
        "ASCE 7-16 table 26.10-1, from memory");
  }

  @Nested
  class FromOutside {
    @ParameterizedTest
    @MethodSource("mullwright.analysis.wind.VelocityPressureTest#checks")
    void pressures(OutsideCheck check) {
      check.hold();
    }

    @Test
    void groundElevation() {
      // ASCE 7-16 table 26.9-1, from memory: 1000 ft 0.96, 3000 ft 0.90, 6000 ft 0.80
      double[][] rows = {{0, 1.00}, {1000, 0.96}, {3000, 0.90}, {6000, 0.80}};
      for (double[] row : rows) {
        double found =
            OutsideCheck.solved(GroundElevation.solve(new GroundElevation.Site(row[0] * FOOT)));
        assertThat(found).isCloseTo(row[1], within(0.006));
      }
    }
  }

  @Nested
  class Contract {
    @ParameterizedTest
    @EnumSource(WindEdition.class)
    void windGrowsWithHeightAndOpenness(WindEdition edition) {
      double before = 0;
      for (double feet = 15; feet <= 700; feet += 20) {
        double now = at(edition, Exposure.B, feet).pressure();
        assertThat(now).isGreaterThan(before);
        before = now;
      }
      assertThat(at(edition, Exposure.B, 60).pressure())
          .isLessThan(at(edition, Exposure.C, 60).pressure());
      assertThat(at(edition, Exposure.C, 60).pressure())
          .isLessThan(at(edition, Exposure.D, 60).pressure());
    }

    @Test
    void lowestHeightsAreAlike() {
      assertThat(at(WindEdition.ASCE_7_16, Exposure.C, 0))
          .isEqualTo(at(WindEdition.ASCE_7_16, Exposure.C, 15));
    }

    @Test
    void pressureGoesWithTheSquareOfSpeedAndWithEachFactor() {
      Site site = new Site(WindEdition.ASCE_7_16, Exposure.C, 20, 40, 1, 0.85, 1, 0);
      Site twice = new Site(WindEdition.ASCE_7_16, Exposure.C, 20, 80, 1.5, 0.85, 0.9, 0);
      assertThat(solve(twice).pressure())
          .isCloseTo(4 * 1.5 * 0.9 * solve(site).pressure(), within(1e-9));
    }

    @Test
    void floorHoldsLowCoefficientsOnly() {
      Site low = new Site(WindEdition.ASCE_7_16, Exposure.B, 4.6, 50, 1, 0.85, 1, 0.7);
      Site high = new Site(WindEdition.ASCE_7_16, Exposure.B, 46, 50, 1, 0.85, 1, 0.7);
      assertThat(solve(low).exposureCoefficient()).isEqualTo(0.7);
      assertThat(solve(high).exposureCoefficient()).isGreaterThan(0.7);
    }

    @Test
    void editionsNearlyAgreeInOpenTerrain() {
      for (double feet = 15; feet <= 300; feet += 15) {
        double earlier = at(WindEdition.ASCE_7_16, Exposure.C, feet).pressure();
        assertThat(at(WindEdition.ASCE_7_22, Exposure.C, feet).pressure())
            .isCloseTo(earlier, within(earlier * 0.02));
      }
    }

    @Test
    void refusesWhatIsNotStated() {
      OutsideCheck.refused(
          VelocityPressure.solve(
              new Site(WindEdition.ASCE_7_16, Exposure.D, 300, 50, 1, 0.85, 1, 0)),
          "height above ground");
      OutsideCheck.refused(
          VelocityPressure.solve(new Site(WindEdition.ASCE_7_16, Exposure.C, 10, 0, 1, 0.85, 1, 0)),
          "basic wind speed");
      OutsideCheck.refused(
          VelocityPressure.solve(
              new Site(WindEdition.ASCE_7_16, Exposure.C, 10, 50, 0, 0.85, 1, 0)),
          "topographic factor");
      OutsideCheck.refused(
          VelocityPressure.solve(new Site(WindEdition.ASCE_7_16, Exposure.C, 10, 50, 1, 0, 1, 0)),
          "directionality factor");
      OutsideCheck.refused(
          GroundElevation.solve(new GroundElevation.Site(9000)), "ground elevation");
    }
  }

  @Nested
  class Unchanged {
    // Own value: ask a human before editing it.
    @Test
    void ownValue() {
      Site site = new Site(WindEdition.ASCE_7_22, Exposure.B, 37, 48, 1.1, 0.85, 0.97, 0);
      assertThat(solve(site).pressure()).isCloseTo(1282.3404084942154, within(1e-6));
    }
  }
}
