package mullwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import mullwright.quantity.Outcome.Remark;
import mullwright.quantity.QuantityProblem.Limit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Reading of quantities other than lengths. */
class QuantityReaderTest {
  /** Text, number and unit meant. */
  @ParameterizedTest
  @CsvSource({
    "32 psf, 32, POUND_PER_SQUARE_FOOT",
    "32psf, 32, POUND_PER_SQUARE_FOOT",
    "1.5 kPa, 1500, PASCAL",
    "10 F, 10, FAHRENHEIT",
    "-12 C, -12, CELSIUS",
    "−12 °C, -12, CELSIUS",
    "9.85 in4, 9.85, INCH_TO_THE_FOURTH",
    "4.1e6 mm4, 4100000, MILLIMETRE_TO_THE_FOURTH",
    "4.1E+6 mm4, 410, CENTIMETRE_TO_THE_FOURTH",
    "1.28e-5 /F, 0.0000128, PER_FAHRENHEIT",
    "2.1 lb/ft, 2.1, POUND_MASS_PER_FOOT",
    "150 N, 0.15, KILONEWTON",
    "350 lb, 350, POUND_FORCE",
    "90 deg, 90, DEGREE",
    "5 %, 5, PERCENT",
    "5%, 5, PERCENT",
    "10100 ksi, 10100, KIP_PER_SQUARE_INCH",
    "70000 N/mm2, 70, GIGAPASCAL",
    "0.45 Btu/hft2F, 0.45, BTU_PER_HOUR_SQUARE_FOOT_FAHRENHEIT",
    "3 s, 3, SECOND",
    ".5 h, 30, MINUTE"
  })
  void readsExactly(String text, String number, Unit unit) {
    assertThat(QuantityReader.read(text))
        .isEqualTo(Outcome.of(Quantity.of(Rational.of(number), unit)));
  }

  @Test
  void aSharedSpellingMeansWhatIsAskedFor() {
    assertThat(QuantityReader.read("6 psf", Kind.MASS_PER_AREA).value())
        .contains(Quantity.of(Rational.of(6), Unit.POUND_MASS_PER_SQUARE_FOOT));
    assertThat(QuantityReader.read("6 psf", Kind.PRESSURE).value())
        .contains(Quantity.of(Rational.of(6), Unit.POUND_PER_SQUARE_FOOT));
    assertThat(QuantityReader.read("6 lb", Kind.MASS).value())
        .contains(Quantity.of(Rational.of(6), Unit.POUND_MASS));
    assertThat(QuantityReader.read("6 lb/ft", Kind.FORCE_PER_LENGTH).value())
        .contains(Quantity.of(Rational.of(6), Unit.POUND_FORCE_PER_FOOT));
    assertThat(QuantityReader.read("90 F", Kind.TEMPERATURE_DIFFERENCE).value())
        .contains(Quantity.of(Rational.of(90), Unit.FAHRENHEIT_DIFFERENCE));
    assertThat(QuantityReader.read("36 psi", Kind.STRESS).value())
        .contains(Quantity.of(Rational.of("0.036"), Unit.KIP_PER_SQUARE_INCH));
  }

  @Test
  void aMarkedLengthIsAQuantityToo() {
    assertThat(QuantityReader.read("5'-6\"").value()).contains(Quantity.of(Length.ofInches(66)));
    assertThat(QuantityReader.read("5'-6\"", Kind.LENGTH).value())
        .contains(Quantity.of(Length.ofInches(66)));
    assertThat(QuantityReader.read("5'-13\"", Kind.LENGTH).remarks()).hasSize(1);
  }

  static Stream<Arguments> refusals() {
    return Stream.of(
        arguments("32 psf", Kind.FORCE, wrongKind(Kind.FORCE, Kind.PRESSURE), 0, 6),
        arguments("5'-6\"", Kind.FORCE, wrongKind(Kind.FORCE, Kind.LENGTH), 0, 5),
        arguments("10 in4", Kind.AREA, wrongKind(Kind.AREA, Kind.SECOND_MOMENT), 0, 6),
        arguments("32", Kind.PRESSURE, new QuantityProblem.UnitMissing(), 2, 2),
        arguments("3 lbs", Kind.FORCE, unknown("lbs"), 2, 5),
        arguments("3 KPA", Kind.PRESSURE, unknown("KPA", "kPa"), 2, 5),
        arguments("3 inches", Kind.LENGTH, unknown("inches", "\""), 2, 8),
        arguments("1,5 kPa", Kind.PRESSURE, new QuantityProblem.CommaInNumber(), 1, 2),
        arguments("1. kPa", Kind.PRESSURE, new QuantityProblem.Malformed(), 0, 6),
        arguments("5-6", Kind.RATIO, new QuantityProblem.Malformed(), 0, 3),
        arguments("psf", Kind.PRESSURE, new QuantityProblem.Malformed(), 0, 3),
        arguments("3 kg m", Kind.MASS, new QuantityProblem.Malformed(), 0, 6),
        arguments("1e99 Pa", Kind.PRESSURE, new QuantityProblem.TooLarge(Limit.DIGITS), 0, 4),
        arguments(
            "1e-9999999 Pa", Kind.PRESSURE, new QuantityProblem.TooLarge(Limit.DIGITS), 0, 10),
        arguments(
            "1".repeat(41) + " Pa",
            Kind.PRESSURE,
            new QuantityProblem.TooLarge(Limit.DIGITS),
            0,
            41));
  }

  private static QuantityProblem wrongKind(Kind asked, Kind found) {
    return new QuantityProblem.WrongKind(asked, found.dimension());
  }

  private static QuantityProblem unknown(String spelling, String... offered) {
    return new QuantityProblem.UnknownUnit(spelling, List.of(offered));
  }

  @ParameterizedTest
  @MethodSource("refusals")
  void refusesWithAPlace(String text, Kind asked, QuantityProblem problem, int start, int end) {
    Outcome<Quantity> read = QuantityReader.read(text, asked);
    assertThat(read.value()).isEmpty();
    assertThat(read.remarks()).containsExactly(new Remark(problem, start, end));
  }

  @Test
  void everyUnitReadsInEverySpelling() {
    for (Unit unit : Unit.values()) {
      for (String spelling : unit.spellings()) {
        for (String space : List.of("", " ", "  ")) {
          boolean mark = unit == Unit.INCH || unit == Unit.FOOT;
          String text = mark ? "2.5" + spelling : "2.5" + space + spelling;
          assertThat(QuantityReader.read(text, unit.kind()).value())
              .as(text)
              .contains(Quantity.of(Rational.of("2.5"), unit));
        }
      }
    }
  }

  @Test
  void whateverIsPrintedInAUnitReadsBack() {
    SplittableRandom random = new SplittableRandom(811);
    for (Unit unit : Unit.values()) {
      if (unit.kind() == Kind.LENGTH) {
        continue; // lengths have printers of their own
      }
      for (int i = 0; i < 200; i++) {
        double size = Math.pow(10, random.nextInt(-9, 12)) * random.nextDouble(-10, 10);
        Quantity quantity = Quantity.of(Rational.of(size), unit);
        String printed = QuantityPrinter.in(unit, quantity);
        Outcome<Quantity> read = QuantityReader.read(printed, unit.kind());
        assertThat(read.value()).as(printed).isPresent();
        assertThat(QuantityPrinter.in(unit, read.value().get())).isEqualTo(printed);
      }
    }
  }
}
