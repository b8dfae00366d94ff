package mullwright.analysis.lite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import mullwright.analysis.wall.WindOnWall;
import mullwright.analysis.wind.ExposureCoefficients;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Components and cladding from the text of a wall to the pressure on a lite, over terrain, height,
 * area, enclosure and edition.
 */
class CladdingSweepTest {
  private static final double PSF = 47.88026;

  /** The lite stands so high above ground that it takes the pressure of the roof. */
  private static WindOnWall.Pressure on(String site, double wide, double high) {
    OneLite lite =
        OneLite.of(
            wide + "'",
            high + "'",
            "ply 12 annealed",
            "wind ultimate\nwind ground at 0 - 900000, " + site);
    return lite.analysis().wind().on(lite.cell());
  }

  /**
   * GC_p towards the wall, away from it in zone 4 and in zone 5, read off the figures' straight
   * lines on the logarithm of the area: by their end values, ASCE 7-16 figures 30.3-1 and 30.4-1,
   * from memory.
   */
  private static double[] coefficients(double height, double area) {
    double least = height > 60 ? 20 : 10;
    double way = Math.log(Math.max(least, Math.min(500, area)) / least) / Math.log(500 / least);
    double[] first = height > 60 ? new double[] {0.9, 0.9, 1.8} : new double[] {1.0, 1.1, 1.4};
    double[] last = height > 60 ? new double[] {0.6, 0.7, 1.0} : new double[] {0.7, 0.8, 0.8};
    double[] found = new double[3];
    for (int i = 0; i < 3; i++) {
      found[i] = first[i] + way * (last[i] - first[i]);
    }
    return found;
  }

  // q = 0.00256 Kh Kzt Kd V²: ASCE 7 equation 26.10-1; Kd 0.85: table 26.6-1; GC_pi 0.18 and 0.55:
  // table 26.13-1; at least 16 psf: 30.2.2; 0.6 of it in service: 2.4.1; all from memory
  private static void holds(
      String as, WindOnWall.Pressure pressure, double q, double[] coefficients, double internal) {
    double in = 0.6 * Math.max(16, q * (coefficients[0] + internal));
    double out = 0.6 * Math.max(16, q * (coefficients[1] + internal));
    // two digits of the table, and a hair for the end values' roundings
    assertThat(pressure.in() / PSF).as(as + ", in").isCloseTo(in, within(0.01 * in));
    assertThat(pressure.out() / PSF).as(as + ", out").isCloseTo(out, within(0.01 * out));
  }

  @ParameterizedTest
  @ValueSource(strings = {"B", "C", "D"})
  void overHeightsAndTerrains(String exposure) {
    for (double[] row : ExposureCoefficients.TABLE) {
      double k = row["BCD".indexOf(exposure) + 1];
      double q = 0.00256 * k * 0.85 * 120 * 120;
      for (String corners : new String[] {"none", "both"}) {
        String site =
            "speed 120 mph, exposure %s, roof height %s', building width 100', enclosed, corners %s"
                .formatted(exposure, row[0], corners);
        double[] c = coefficients(row[0], 60);
        c[1] = corners.equals("both") ? c[2] : c[1];
        holds(site, on(site, 5, 12), q, c, 0.18);
      }
    }
  }

  // K_h of exposure C: ASCE 7 table 26.10-1, from memory
  @ParameterizedTest
  @CsvSource({"30, 0.98", "60, 1.13", "90, 1.24", "400, 1.69"})
  void overAreas(double height, double k) {
    double q = 0.00256 * k * 0.85 * 140 * 140;
    double[][] lites = {{2.5, 2}, {2, 5}, {4, 5}, {5, 10}, {10, 10}, {10, 20}, {20, 25}, {25, 30}};
    for (double[] lite : lites) {
      for (String enclosure : new String[] {"enclosed", "partially-enclosed"}) {
        String site =
            "speed 140 mph, exposure C, roof height %s', building width 100', %s, corners none"
                .formatted(height, enclosure);
        holds(
            site + " of " + lite[0] * lite[1] + " ft²",
            on(site, lite[0], lite[1]),
            q,
            coefficients(height, lite[0] * lite[1]),
            enclosure.equals("enclosed") ? 0.18 : 0.55);
      }
    }
  }

  // Kzt as given, K_e = exp(−0.0000362 z) with z in feet: ASCE 7-16 table 26.9-1, note 2, from
  // memory; 7-22 profile 2.41(z/z_g)^(2/α): 26.10.1, from memory, recomputed
  @ParameterizedTest
  @CsvSource({
    "'Kzt 1.3', 1.09, 1.3",
    "'altitude 5280''', 1.09, 0.826",
    "'Kzt 1.5, altitude 3000''', 1.09, 1.3457",
    "'Kd 0.9', 1.09, 1.0588",
    "'edition 2022', 1.0882, 1",
    "'edition 2022, Kzt 1.2', 1.0882, 1.2"
  })
  void overSitesAndEditions(String more, double k, double factor) {
    String site =
        "speed 115 mph, exposure C, roof height 50', building width 80', enclosed, corners none, "
            + more;
    double q = 0.00256 * k * factor * 0.85 * 115 * 115;
    holds(site, on(site, 5, 12), q, coefficients(50, 60), 0.18);
  }
}
