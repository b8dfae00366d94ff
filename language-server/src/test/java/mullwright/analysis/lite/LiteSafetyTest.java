package mullwright.analysis.lite;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import mullwright.analysis.glass.SafetyGlazing.Condition;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Safety glazing seen from the floors of a wall; IBC 2406.4.3, from memory. */
class LiteSafetyTest {
  /** The daylight opening begins 125 mm above the datum and is 20 mm less than the glass. */
  private static LiteSafety of(String width, String height, String floorLine) {
    OneLite lite = OneLite.of(width, height, "ply 6 annealed", "safety floor line " + floorLine);
    return LiteSafety.of(lite.analysis().layout(), lite.cell());
  }

  private record Case(String what, String width, String height, String floor, boolean required) {}

  @TestFactory
  Stream<DynamicTest> decidesAtTheEdgesOfTheConditions() {
    // 9 ft² is 836127.36 mm²; 18 in is 457.2 mm; 36 in is 914.4 mm
    return Stream.of(
            new Case("large, low and high", "1500", "1800", "0", true),
            new Case("bottom just under 18 in", "1500", "1800", "-332.1", true),
            new Case("bottom at 18 in", "1500", "1800", "-332.2", false),
            new Case("9 ft² exactly", "856.12736", "1020", "0", false),
            new Case("a hair above 9 ft²", "856.13", "1020", "0", true),
            new Case("top at 36 in", "1500", "809.4", "0", false),
            new Case("top a hair above 36 in", "1500", "809.5", "0", true),
            new Case("begins below the floor and passes it", "1500", "2500", "800", true),
            new Case("a name with a height", "1500", "1800", "40 above L1", true))
        .map(
            it ->
                DynamicTest.dynamicTest(
                    it.what(),
                    () ->
                        assertThat(of(it.width(), it.height(), it.floor()).required())
                            .isEqualTo(it.required())));
  }

  @Test
  void allFourConditionsAreShownWhateverTheyCome() {
    LiteSafety.Seen seen = of("1500", "1800", "-332.2").shown().orElseThrow();
    assertThat(seen.conditions()).hasSize(4);
    assertThat(seen.conditions())
        .extracting(Condition::met)
        .containsExactly(true, false, true, true);
    assertThat(seen.reaches()).as("the distance is assumed and says so").isTrue();
    assertThat(seen.notExamined()).isNotEmpty();
  }
}
