package mullwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Printing of lengths in running text, and exactly. */
class LengthPrinterTest {
  /** Every figure converted by hand with 1 in = 25.4 mm. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "5'-11 3/16\"|5'-11 3/16\" (1808.2 mm)",
        "5'|5'-0\" (1524 mm)",
        "9\"|9\" (228.6 mm)",
        "1/32\"|1/32\" (0.79 mm)",
        "63/64\"|63/64\" (25 mm)",
        "1500 mm|4'-11 1/16\" (1500 mm)",
        "5.87 mm|0.231\" (5.87 mm)",
        "-5.87 mm|-0.231\" (-5.87 mm)",
        "0\"|0\" (0 mm)"
      })
  void bothSystems(String text, String printed) {
    assertThat(LengthPrinter.both(LengthReader.read(text).value().orElseThrow(), UnitSystem.US))
        .isEqualTo(printed);
  }

  @Test
  void theSystemOfTheProjectComesFirst() {
    assertThat(LengthPrinter.both(Length.ofMillimetres(1524), UnitSystem.SI))
        .isEqualTo("1524 mm (5'-0\")");
  }

  @Test
  void exactMeansExact() {
    assertThat(LengthPrinter.exact(Length.ofInches(3, 64), UnitSystem.US)).isEqualTo("3/64\"");
    assertThat(LengthPrinter.exact(Length.ofInches(-3, 64), UnitSystem.SI))
        .isEqualTo("-1.190625 mm");
    assertThat(LengthPrinter.exact(Length.ofInches(1, 128), UnitSystem.US))
        .isEqualTo("0.0078125\"");
    assertThat(LengthPrinter.exact(Length.ofMillimetres(1, 10), UnitSystem.US)).isEqualTo("0.1 mm");
    assertThat(LengthPrinter.exact(Length.ofInches(1, 64).half().half(), UnitSystem.SI))
        .isEqualTo("0.09921875 mm");
  }
}
