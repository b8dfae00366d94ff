package mullwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Printing of quantities in both systems. Figures converted with NIST SP 811 factors, from memory.
 */
class QuantityPrinterTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "PRESSURE|32 psf|32 psf (1.532 kPa)",
        "PRESSURE|1.5 kPa|31.33 psf (1.5 kPa)",
        "STRESS|10100 ksi|10100 ksi (69637 MPa)",
        "STRESS|15 ksi|15 ksi (103.4 MPa)",
        "FORCE|150 N|33.72 lb (150 N)",
        "FORCE|1200 lb|1200 lb (5.338 kN)",
        "FORCE|-1200 lb|-1200 lb (-5.338 kN)",
        "MOMENT|10000 lb·in|10000 lb·in (1.13 kN·m)",
        "FORCE_PER_LENGTH|160 plf|13.33 lb/in (2.335 kN/m)",
        "MASS|100 kg|220.5 lb (100 kg)",
        "MASS_PER_LENGTH|2.1 lb/ft|2.1 lb/ft (3.125 kg/m)",
        "MASS_PER_AREA|6 psf|6 psf (29.29 kg/m2)",
        "DENSITY|2500 kg/m3|156.1 pcf (2500 kg/m3)",
        "SECOND_MOMENT|9.85 in4|9.85 in4 (4.1e6 mm4)",
        "SECTION_MODULUS|3.28 in3|3.28 in3 (53750 mm3)",
        "AREA|1.5 in2|1.5 in2 (967.7 mm2)",
        "AREA|31.5 ft2|31.5 ft2 (2.926 m2)",
        "TEMPERATURE|60 F|60 °F (15.6 °C)",
        "TEMPERATURE|-10 F|-10 °F (-23.3 °C)",
        "TEMPERATURE_DIFFERENCE|160 F|160 °F (88.9 K)",
        "THERMAL_EXPANSION|1.28e-5 /F|1.28e-5 /°F (2.304e-5 /°C)",
        "U_FACTOR|0.45 Btu/hft2F|0.45 Btu/hft2F (2.555 W/m2K)",
        "LINEAR_TRANSMITTANCE|0.11 W/mK|0.06356 Btu/hftF (0.11 W/mK)",
        "SPEED|115 mph|115 mph (51.41 m/s)",
        "ANGLE|90 deg|90 deg",
        "TIME|3 s|3 s",
        "RATIO|0.125|0.125",
        "RATIO|0|0",
        "LENGTH|1524 mm|5'-0\" (1524 mm)",
      })
  void bothSystems(Kind kind, String text, String printed) {
    Quantity quantity = QuantityReader.read(text, kind).value().orElseThrow();
    assertThat(QuantityPrinter.both(quantity, kind, UnitSystem.US)).isEqualTo(printed);
  }

  /** What was written comes back, in its own unit where the first system's has no end. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "PRESSURE|US|32.125 psf|32.125 psf",
        "PRESSURE|US|1.5 kPa|1.5 kPa",
        "PRESSURE|SI|32 psf|32 psf",
        "PRESSURE|SI|1500 Pa|1.5 kPa",
        "FORCE|US|150 N|150 N",
        "TEMPERATURE|US|-10 F|-10 °F",
        "TEMPERATURE|SI|-10 F|-10 °F",
        "TEMPERATURE|SI|20 C|20 °C",
        "TEMPERATURE|US|-12 C|10.4 °F",
        "SECOND_MOMENT|US|4.1e6 mm4|4100000 mm4",
        "THERMAL_EXPANSION|SI|1.28e-5 /F|0.00002304 /°C",
        "RATIO|US|0.125|0.125",
        "MASS_PER_LENGTH|US|2.1 lb/ft|2.1 lb/ft",
      })
  void withoutRounding(Kind kind, UnitSystem first, String text, String printed) {
    Quantity quantity = QuantityReader.read(text, kind).value().orElseThrow();
    assertThat(QuantityPrinter.exact(quantity, kind, first)).isEqualTo(printed);
  }

  /** The seventh of a pascal. */
  @Test
  void whatHasNoEndInEitherSystemIsAFraction() {
    Quantity seventh =
        new Quantity(Rational.of(1, 7), Quantity.of(Rational.ONE, Unit.KILOPASCAL).dimension());
    assertThat(QuantityPrinter.exact(seventh, Kind.PRESSURE, UnitSystem.US)).isEqualTo("1/7 (SI)");
  }

  @ParameterizedTest
  @CsvSource({
    "0.00012345, 1.235e-4",
    "0.00099996, 0.001",
    "0.00099994, 9.999e-4",
    "0.0012345, 0.001235",
    "12.345, 12.35",
    "-12.345, -12.35",
    "999.96, 1000",
    "1234.5, 1235",
    "999999.4, 999999",
    "999999.6, 1e6",
    "1234567, 1.235e6",
    "-1e15, -1e15",
    "0, 0"
  })
  void fourDigitsThatMeanSomething(String number, String printed) {
    assertThat(QuantityPrinter.number(Rational.of(number))).isEqualTo(printed);
  }

  @Test
  void theSystemOfTheProjectComesFirst() {
    Quantity pressure = Quantity.of(Rational.of(1000), Unit.PASCAL);
    assertThat(QuantityPrinter.both(pressure, Kind.PRESSURE, UnitSystem.SI))
        .isEqualTo("1 kPa (20.89 psf)");
  }

  @Test
  void aLengthBeyondWhatTextMaySayStillPrints() {
    Quantity absurd = Quantity.ofSi(1e30, Kind.LENGTH);
    assertThat(QuantityPrinter.both(absurd, Kind.LENGTH, UnitSystem.US)).isEqualTo("1e30 m");
  }

  @Test
  void aPercentageHasNoSpace() {
    assertThat(QuantityPrinter.in(Unit.PERCENT, Quantity.of(Rational.of(1, 8)))).isEqualTo("12.5%");
  }
}
