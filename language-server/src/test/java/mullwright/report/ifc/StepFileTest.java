package mullwright.report.ifc;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How values are spelt. */
class StepFileTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        // ISO 10303-21, string: an apostrophe and a reverse solidus are written twice
        "plain 5'-6  | 'plain 5''-6'",
        "a\\b         | 'a\\\\b'",
        // ISO 10303-21, control directive X2: four hexadecimal digits a character
        "Größe        | 'Gr\\X2\\00F6\\X0\\\\X2\\00DF\\X0\\e'",
        // ISO 10303-21, control directive X4: eight of them, beyond the basic plane
        "\uD83D\uDE00 | '\\X4\\0001F600\\X0\\'",
      })
  void textIsAscii(String words, String spelt) {
    assertThat(StepValue.text(words).spelling()).isEqualTo(spelt);
  }

  @ParameterizedTest
  @CsvSource({"1524, 1524.", "0.00001, 0.00001", "0, 0.", "-12.50, -12.5", "1E3, 1000."})
  void aRealHasItsPoint(String value, String spelt) {
    // ISO 10303-21, real: digits, point, then further digits if there are any
    assertThat(StepValue.real(new BigDecimal(value)).spelling()).isEqualTo(spelt);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "O'Hara's \\ wall", "Ł\uD83D\uDE00'ß\\X2\\"})
  void whatIsWrittenIsRead(String words) {
    StepFile file = new StepFile();
    file.add("A", StepValue.text(words), StepValue.NONE, StepValue.DERIVED);
    StepText read = new StepText(file.write(words, words, "t", words, "S"));
    assertThat(read.data.get(1).values())
        .isEqualTo(List.of(words, StepText.Mark.OMITTED, StepText.Mark.DERIVED));
    assertThat(read.header.get("FILE_NAME").get(0)).isEqualTo(words);
  }

  @Test
  void equalOnesAreShared() {
    StepFile file = new StepFile();
    StepValue first = file.share("P", StepValue.whole(1));
    assertThat(file.share("P", StepValue.whole(1))).isEqualTo(first);
    assertThat(file.share("P", StepValue.whole(2))).isNotEqualTo(first);
  }
}
