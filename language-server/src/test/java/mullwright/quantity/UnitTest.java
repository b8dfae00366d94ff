package mullwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The table of units against the GNU units program and against published factors. */
class UnitTest {
  /** How GNU units spells what our table spells otherwise. */
  private static final Map<Unit, String> SPELLED_OTHERWISE =
      Map.ofEntries(
          Map.entry(Unit.INCH, "inch"),
          Map.entry(Unit.FOOT, "foot"),
          Map.entry(Unit.SQUARE_INCH, "inch^2"),
          Map.entry(Unit.SQUARE_FOOT, "foot^2"),
          Map.entry(Unit.SQUARE_MILLIMETRE, "mm^2"),
          Map.entry(Unit.SQUARE_CENTIMETRE, "cm^2"),
          Map.entry(Unit.SQUARE_METRE, "m^2"),
          Map.entry(Unit.CUBIC_INCH, "inch^3"),
          Map.entry(Unit.CUBIC_MILLIMETRE, "mm^3"),
          Map.entry(Unit.CUBIC_CENTIMETRE, "cm^3"),
          Map.entry(Unit.INCH_TO_THE_FOURTH, "inch^4"),
          Map.entry(Unit.MILLIMETRE_TO_THE_FOURTH, "mm^4"),
          Map.entry(Unit.CENTIMETRE_TO_THE_FOURTH, "cm^4"),
          Map.entry(Unit.POUND_PER_SQUARE_FOOT, "lbf/foot^2"),
          Map.entry(Unit.KIP_PER_SQUARE_INCH, "1000 lbf/inch^2"),
          Map.entry(Unit.NEWTON_PER_SQUARE_MILLIMETRE, "N/mm^2"),
          Map.entry(Unit.POUND_FORCE, "lbf"),
          Map.entry(Unit.KIP, "1000 lbf"),
          Map.entry(Unit.POUND_FORCE_INCH, "lbf inch"),
          Map.entry(Unit.KIP_INCH, "1000 lbf inch"),
          Map.entry(Unit.NEWTON_METRE, "N m"),
          Map.entry(Unit.KILONEWTON_METRE, "kN m"),
          Map.entry(Unit.POUND_MASS_PER_FOOT, "lb/foot"),
          Map.entry(Unit.POUND_MASS_PER_SQUARE_FOOT, "lb/foot^2"),
          Map.entry(Unit.KILOGRAM_PER_SQUARE_METRE, "kg/m^2"),
          Map.entry(Unit.POUND_PER_CUBIC_FOOT, "lb/foot^3"),
          Map.entry(Unit.KILOGRAM_PER_CUBIC_METRE, "kg/m^3"),
          Map.entry(Unit.POUND_FORCE_PER_INCH, "lbf/inch"),
          Map.entry(Unit.POUND_FORCE_PER_FOOT, "lbf/foot"),
          Map.entry(Unit.FAHRENHEIT, "tempF(1)"),
          Map.entry(Unit.CELSIUS, "tempC(1)"),
          Map.entry(Unit.FAHRENHEIT_DIFFERENCE, "degF"),
          Map.entry(Unit.CELSIUS_DIFFERENCE, "degC"),
          Map.entry(Unit.PER_FAHRENHEIT, "1/degF"),
          Map.entry(Unit.PER_CELSIUS, "1/degC"),
          Map.entry(Unit.PER_KELVIN, "1/K"),
          Map.entry(Unit.BTU_PER_HOUR_SQUARE_FOOT_FAHRENHEIT, "btu/(hour foot^2 degF)"),
          Map.entry(Unit.WATT_PER_SQUARE_METRE_KELVIN, "W/(m^2 K)"),
          Map.entry(Unit.BTU_PER_HOUR_FOOT_FAHRENHEIT, "btu/(hour foot degF)"),
          Map.entry(Unit.WATT_PER_METRE_KELVIN, "W/(m K)"),
          Map.entry(Unit.DEGREE, "degree/degree"),
          Map.entry(Unit.PERCENT, "percent"),
          Map.entry(Unit.HOUR, "hour"));

  @Test
  void everyUnitAgreesWithGnuUnits() throws IOException, InterruptedException {
    List<Unit> all = List.of(Unit.values());
    StringBuilder questions = new StringBuilder();
    for (Unit unit : all) {
      questions.append(SPELLED_OTHERWISE.getOrDefault(unit, unit.symbol())).append('\n');
      questions.append(siOf(unit.kind().dimension())).append('\n');
    }
    List<String> answers = askGnuUnits(questions.toString());
    assertThat(answers).hasSameSizeAs(all);
    for (int i = 0; i < all.size(); i++) {
      Unit unit = all.get(i);
      double reference = Double.parseDouble(answers.get(i).replace("*", "").strip());
      double ours = Quantity.of(Rational.ONE, unit).toSi();
      assertThat(ours).as(unit.toString()).isCloseTo(reference, within(4e-15 * reference));
    }
  }

  private static String siOf(Dimension d) {
    return "m^%d kg^%d s^%d K^%d"
        .formatted(d.length(), d.mass(), d.time(), d.temperature())
        .replaceAll("\\w+\\^0 ?", "")
        .replaceFirst("^$", "1");
  }

  private static List<String> askGnuUnits(String questions)
      throws IOException, InterruptedException {
    Process process;
    try {
      process =
          new ProcessBuilder(
                  "units", "--quiet", "--one-line", "--strict", "--output-format", "%.17g")
              .redirectErrorStream(true)
              .start();
    } catch (IOException absent) {
      assumeTrue(false, "the program GNU units is not installed here");
      throw absent;
    }
    try (var in = process.getOutputStream()) {
      in.write(questions.getBytes(StandardCharsets.UTF_8));
    }
    String answer = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    assertThat(process.waitFor(20, TimeUnit.SECONDS)).isTrue();
    return answer.lines().toList();
  }

  /**
   * Factors to SI as printed, seven digits. NIST Special Publication 811 Appendix B, from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "POUND_PER_SQUARE_FOOT, 4.788026E+01",
    "POUND_PER_SQUARE_INCH, 6.894757E+03",
    "KIP_PER_SQUARE_INCH, 6.894757E+06",
    "POUND_FORCE, 4.448222E+00",
    "KIP, 4.448222E+03",
    "POUND_FORCE_INCH, 1.129848E-01",
    "POUND_FORCE_PER_INCH, 1.751268E+02",
    "POUND_FORCE_PER_FOOT, 1.459390E+01",
    "POUND_MASS, 4.535924E-01",
    "POUND_MASS_PER_FOOT, 1.488164E+00",
    "POUND_MASS_PER_SQUARE_FOOT, 4.882428E+00",
    "POUND_PER_CUBIC_FOOT, 1.601846E+01",
    "SQUARE_INCH, 6.4516E-04",
    "SQUARE_FOOT, 9.290304E-02",
    "CUBIC_INCH, 1.638706E-05",
    "INCH_TO_THE_FOURTH, 4.162314E-07",
    "MILE_PER_HOUR, 4.4704E-01",
    "BTU_PER_HOUR_SQUARE_FOOT_FAHRENHEIT, 5.678263E+00",
    "BTU_PER_HOUR_FOOT_FAHRENHEIT, 1.730735E+00",
    "PER_FAHRENHEIT, 1.8E+00"
  })
  void agreesWithPublishedFactors(Unit unit, double published) {
    assertThat(unit.factor().toDouble()).isCloseTo(published, within(5e-7 * published));
  }

  @Test
  void derivedFactorsAreExact() {
    assertThat(Unit.POUND_FORCE.factor()).isEqualTo(Rational.of("4.4482216152605")); // by hand
    assertThat(Unit.MILE_PER_HOUR.factor()).isEqualTo(Rational.of("0.44704")); // by hand
  }

  @Test
  void aSpellingIsUniqueWithinAKind() {
    for (Kind kind : Kind.values()) {
      Set<String> seen = new HashSet<>();
      Arrays.stream(Unit.values())
          .filter(unit -> unit.kind().dimension().equals(kind.dimension()))
          .flatMap(unit -> unit.spellings().stream())
          .forEach(spelling -> assertThat(seen.add(spelling)).as(spelling).isTrue());
    }
  }

  @Test
  void everySpellingFindsItsUnitWhereItsKindIsAsked() {
    for (Unit unit : Unit.values()) {
      for (String spelling : unit.spellings()) {
        assertThat(Unit.named(spelling, unit.kind())).contains(unit);
        assertThat(Unit.named(spelling)).isPresent();
      }
    }
  }

  @Test
  void inAloneIsNoUnit() {
    assertThat(Unit.named("in")).isEmpty();
    assertThat(Unit.named("in2")).contains(Unit.SQUARE_INCH);
  }

  @Test
  void everyKindHasAUnit() {
    for (Kind kind : Kind.values()) {
      assertThat(Unit.of(kind)).as(kind.words()).isNotEmpty();
    }
  }
}
