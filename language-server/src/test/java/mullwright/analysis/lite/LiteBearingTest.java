package mullwright.analysis.lite;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import mullwright.analysis.OutsideCheck;
import mullwright.derivation.Derivation;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Lites of a wall, from the text to what they bear. */
class LiteBearingTest {
  private static final String WIND = "wind service\nwind field 1.5 kPa in, 1.5 kPa out";

  private static OneLite unit(String width, String height, String... layers) {
    return OneLite.of(width, height, String.join("\n", layers), WIND);
  }

  private static double resistance(OneLite lite) {
    return lite.bearing().least().orElseThrow().resistance();
  }

  @TestFactory
  Stream<DynamicTest> resistancesFromOutside() {
    String procedure = "ASTM E1300 procedure on an independent plate solution, recomputed";
    String[] annealed = {"ply 6 annealed", "space 12 air", "ply 6 annealed"};
    String[] strengthened = {"ply 6 heat-strengthened", "space 12 air", "ply 6 heat-strengthened"};
    String[] tempered = {"ply 6 tempered clear", "space 12 air", "ply 6 tempered clear"};
    return Stream.of(
            check("1900 × 1500 × 6", unit("1900", "1500", "ply 6 annealed"), 1785, procedure),
            check("1791 × 1486 × 6", unit("1791", "1486", "ply 6 annealed"), 1894, procedure),
            check("1500 × 1500 × 6", unit("1500", "1500", "ply 6 annealed"), 2181, procedure),
            check("2400 × 1200 × 6", unit("2400", "1200", "ply 6 annealed"), 1419, procedure),
            check("3000 × 1500 × 10", unit("3000", "1500", "ply 10 annealed"), 1766, procedure),
            check("2000 × 1000 × 8", unit("2000", "1000", "ply 8 annealed"), 2825, procedure),
            check("1200 × 1000 × 3", unit("1200", "1000", "ply 3 annealed"), 1612, procedure),
            check(
                "60 × 50 in × 1/4", unit("60\"", "50\"", "ply 1/4\" annealed"), 2403.6, procedure),
            check("6 + 6 annealed", unit("1791", "1486", annealed), 3409, procedure),
            check("6 + 6 strengthened", unit("1791", "1486", strengthened), 6818, procedure),
            check("6 + 6 tempered", unit("1791", "1486", tempered), 13640, procedure))
        .map(check -> DynamicTest.dynamicTest(check.what(), check::hold));
  }

  private static OutsideCheck check(String what, OneLite lite, double expected, String source) {
    return new OutsideCheck(what, resistance(lite), expected, 0.005, source);
  }

  @Test
  void thickerPaneOfAnUnlikeUnitTakesMoreOfTheLoad() {
    UnitStrength unit =
        unit("1500", "1200", "ply 6 annealed", "space 12 air", "ply 8 annealed")
            .bearing()
            .least()
            .orElseThrow();
    // ASTM E1300 load share, shares 0.296 and 0.704, recomputed
    assertThat(unit.panes().get(0).share()).isCloseTo(0.296, within(0.0005));
    assertThat(unit.panes().get(1).share()).isCloseTo(0.704, within(0.0005));
    assertThat(unit.plies().get(0).shareFactor()).isCloseTo(3.377, within(0.004));
    assertThat(unit.plies().get(1).shareFactor()).isCloseTo(1.421, within(0.002));
  }

  @Test
  void aLaminateOfUnknownInterlayerLiesBetweenSlippingAndWhole() {
    OneLite open = unit("1500", "1200", "ply 6 annealed", "interlayer 1.52 PVB", "ply 6 annealed");
    LiteBearing bearing = open.bearing();
    assertThat(bearing.open()).isTrue();
    // closed form: two plies that slip are one of the root of twice the square in stress, each
    // carrying half; two that hold are thicker than both together
    double thickness = bearing.least().orElseThrow().governing().thickness();
    assertThat(thickness).isCloseTo(0.00556 * Math.sqrt(2), within(1e-6));
    assertThat(bearing.most().orElseThrow().governing().thickness()).isGreaterThan(2 * 0.00556);
    OneLite stated =
        unit(
            "1500",
            "1200",
            "ply 6 annealed",
            "interlayer 1.52 PVB",
            "ply 6 annealed",
            "shear-modulus 0.44 MPa");
    assertThat(stated.bearing().open()).isFalse();
    assertThat(resistance(stated))
        .isBetween(resistance(open), bearing.most().orElseThrow().resistance());
  }

  @Test
  void aHeatTreatmentNobodyStatesIsTheWeakestAndIsToldAsADefault() {
    OneLite unsaid = unit("1500", "1200", "ply 6 clear");
    assertThat(resistance(unsaid)).isEqualTo(resistance(unit("1500", "1200", "ply 6 annealed")));
    assertThat(StrengthTrace.resistance(unsaid.bearing()).defaults())
        .extracting(Derivation::name)
        .contains("type factor of annealed glass");
  }

  @Test
  void wordsForHeatTreatmentAreReadAsTheTradeWritesThem() {
    double annealed = resistance(unit("1500", "1200", "ply 6 annealed"));
    for (String words : List.of("heat-strengthened grey", "heat strengthened", "HS")) {
      assertThat(resistance(unit("1500", "1200", "ply 6 " + words))).isEqualTo(2 * annealed);
    }
    for (String words : List.of("tempered", "fully tempered low-iron", "toughened", "clear FT")) {
      assertThat(resistance(unit("1500", "1200", "ply 6 " + words))).isEqualTo(4 * annealed);
    }
  }

  @Test
  void aLongStripBearsALittleLessThanOneOfFiveTimesItsWidth() {
    double five = resistance(unit("2000", "400", "ply 6 annealed"));
    double ten = resistance(unit("4000", "400", "ply 6 annealed"));
    // closed form: twice the area doubles the risk, and risk goes by the seventh power of stress;
    // where membrane forces are small stress goes with load
    assertThat(ten / five).isCloseTo(Math.pow(2, -1 / 7.0), within(0.01));
  }

  @Test
  void aSliverNarrowerThanTwentyThicknessesIsStillChecked() {
    assertThat(resistance(unit("2000", "60", "ply 10 annealed"))).isGreaterThan(20_000);
  }

  @Test
  void whatNoMethodCoversSaysWhy() {
    assertThat(
            unit("900", "900", "ply 6 annealed", "space 12", "ply 6 annealed", "space 12", "ply 6")
                .bearing()
                .outside())
        .hasValueSatisfying(why -> assertThat(why).contains("3 panes"));
    assertThat(unit("900", "900", "ply 6 wired").bearing().outside())
        .hasValueSatisfying(why -> assertThat(why).contains("wired"));
    assertThat(unit("900", "900", "ply 7 annealed").bearing().outside())
        .hasValueSatisfying(why -> assertThat(why).contains("nominal glass thickness"));
  }

  @Test
  void theTraceOfAResistanceMultipliesOut() {
    OneLite lite = unit("1791", "1486", "ply 6 annealed", "space 12 air", "ply 8 tempered");
    Derivation resistance = StrengthTrace.resistance(lite.bearing());
    double product =
        resistance.inputs().stream()
            .mapToDouble(input -> input.value().toSi())
            .reduce(1, (a, b) -> a * b);
    assertThat(product).isCloseTo(resistance.value().toSi(), within(1e-6 * product));
    assertThat(resistance.source().orElseThrow().words()).contains("outer pane governs");
  }

  @Test
  void equalLitesAreSolvedOnceAndEditsElsewhereSolveNothing() {
    OneLite lite = unit("1500", "1200", "ply 6 annealed");
    assertThat(lite.bearing().least().orElseThrow()).isSameAs(lite.bearing().least().orElseThrow());
  }
}
