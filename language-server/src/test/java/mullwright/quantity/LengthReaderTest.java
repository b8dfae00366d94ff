package mullwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import mullwright.quantity.Outcome.Remark;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Reading of length literals: spellings, and what is refused or remarked on. */
class LengthReaderTest {
  /** Text, and the length as a fraction of an inch counted by hand. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "5'-6 1/2\"|133|2",
        "5' 6\"|66|1",
        "5'6\"|66|1",
        "5'|60|1",
        "5'-6\"|66|1",
        "3/8\"|3|8",
        "6 1/2\"|13|2",
        "6-1/2\"|13|2",
        "5'-6-1/2\"|133|2",
        "5'-1/2\"|121|2",
        "5' 1/2\"|121|2",
        "6.5\"|13|2",
        "71.1875\"|1139|16",
        "5'-6.5\"|133|2",
        "5.5'|66|1",
        "0'-0\"|0|1",
        "0\"|0|1",
        "-1'-6\"|-18|1",
        "−1'-6\"|-18|1",
        "-3/8\"|-3|8",
        "5′-6 1/2″|133|2",
        "5’-6 1/2”|133|2",
        "1524 mm|60|1",
        "1524mm|60|1",
        "1.524 m|60|1",
        "152.4 cm|60|1",
        "-25.4 mm|-1|1"
      })
  void readsExactly(String text, long numerator, long denominator) {
    Outcome<Length> read = LengthReader.read(text);
    assertThat(read.value()).contains(Length.ofInches(numerator, denominator));
    assertThat(read.remarks()).isEmpty();
  }

  @Test
  void asksForTheInchMark() {
    assertThat(LengthReader.read("5'-6").remarks())
        .containsExactly(new Remark(new QuantityProblem.InchMarkMissing(), 4, 4));
  }
}
