package mullwright.analysis.lite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Deflection, drift and bite of lites, from the text, against values from outside. */
class LiteLimitsTest {
  private static final String HEAT = "metal temperature -20 C to 60 C, set at 20 C\n";
  private static final double MM = 1e-3;

  private static LiteBend bend(String width, String height, String ply, String pascals) {
    String wind = "wind service\nwind field " + pascals + " Pa in, 100 Pa out";
    OneLite lite = OneLite.of(width, height, "ply " + ply + " annealed", wind);
    return LiteBend.of(lite.analysis(), lite.cell()).orElseThrow();
  }

  // handbook 7.5, independent large-deflection solution (recomputed): mm
  @ParameterizedTest
  @CsvSource({
    "1791, 1486,  6, 1500, 16.80",
    "1791, 1486,  6, 2400, 21.29",
    "2400, 1200,  6, 1500, 18.43",
    "3000, 1000, 10, 2000,  5.29",
    "1500, 1500,  6, 1000, 11.21"
  })
  void centreOfALiteBends(
      String width, String height, String ply, String pascals, double expected) {
    LiteBend bend = bend(width, height, ply, pascals);
    assertThat(bend.deflection() / MM).isCloseTo(expected, within(expected * 2e-3));
  }

  @Test
  void whereNothingIsAskedTheUsualLimitHolds() {
    // EN 16612, from memory: short side ÷ 65, at most 50 mm
    assertThat(bend("1300", "2000", "6", "500").limit() / MM).isCloseTo(20, within(1e-6));
    assertThat(bend("3900", "3900", "12", "100").limit() / MM).isCloseTo(50, within(1e-6));
    assertThat(bend("1300", "2000", "6", "500").stated()).isFalse();
  }

  @Test
  void driftOfALite() {
    // ASCE 7, 13.5.9, from memory, worked by hand: 6 mm at all edges, 1500 × 2000 mm:
    // 2 × 6 + 2 × 6 × 2000 ÷ 1500 = 28 mm; demand 1.25 × 1 × 1 % × 2000 = 25 mm
    OneLite lite = OneLite.of("1500", "2000", "ply 6 annealed", "story drift 1 %");
    LiteDrift drift = LiteDrift.of(lite.analysis(), lite.cell()).orElseThrow();
    assertThat(drift.result().clearDrift() / MM).isCloseTo(28, within(1e-6));
    assertThat(drift.result().demand() / MM).isCloseTo(25, within(1e-6));
    assertThat(drift.result().exempt()).isTrue();
    assertThat(drift.clearDrift().value().toSi() / MM).isCloseTo(28, within(1e-6));
    assertThat(drift.demand().value().toSi() / MM).isCloseTo(25, within(1e-6));
  }

  @Test
  void withoutAStatedDriftNothingIsSaid() {
    OneLite lite = OneLite.of("1500", "2000", "ply 6 annealed", HEAT);
    assertThat(LiteDrift.of(lite.analysis(), lite.cell())).isEmpty();
  }

  private static double bite(List<LiteBite.Left> edges, String edge) {
    return edges.stream().filter(e -> e.edge().equals(edge)).findFirst().orElseThrow().bite() / MM;
  }

  @Test
  void biteLeftByTolerancesAlone() {
    OneLite lite = OneLite.of("1500", "2000", "ply 6 annealed", "story drift 1 %");
    List<LiteBite.Left> edges = LiteBite.of(lite.analysis(), lite.cell());
    // worked by hand: 10 mm bite, 1/16" place of a member, 1/16" size of glass up to 6 mm (ASTM
    // C1036, from memory); at a side half the size counts, at the top all, at the bottom none
    assertThat(bite(edges, "bottom")).isCloseTo(10 - 1.5875, within(1e-6));
    assertThat(bite(edges, "left")).isCloseTo(10 - 1.5875 - 1.5875 / 2, within(1e-6));
    assertThat(bite(edges, "top")).isCloseTo(10 - 1.5875 - 1.5875, within(1e-6));
  }

  @Test
  void heatTakesBiteAndColdTakesClearance() {
    OneLite lite = OneLite.of("1500", "2000", "ply 10 annealed", HEAT);
    List<LiteBite.Left> edges = LiteBite.of(lite.analysis(), lite.cell());
    // closed form: (23.58 − 9.0)e-6 per K × 40 K × 2000 mm at the top, half the width at a side;
    // expansion from handbooks, from memory; 3/32" size of thicker glass (ASTM C1036, from memory)
    double perMillimetre = (13.1e-6 * 1.8 - 9.0e-6) * 40;
    assertThat(bite(edges, "top"))
        .isCloseTo(10 - 1.5875 - 2.38125 - perMillimetre * 2000, within(2e-3));
    assertThat(bite(edges, "left"))
        .isCloseTo(10 - 1.5875 - 2.38125 / 2 - perMillimetre * 750, within(2e-3));
    LiteBite.Left top = edges.get(3);
    // as much colder as warmer: the clearance of 6 mm loses the same
    assertThat(top.clearance() / MM)
        .isCloseTo(6 - 1.5875 - 2.38125 - perMillimetre * 2000, within(2e-3));
    assertThat(top.explainClearance().value().toSi()).isCloseTo(top.clearance(), within(1e-7));
  }
}
