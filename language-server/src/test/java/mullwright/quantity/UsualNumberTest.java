package mullwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is read in one pass is what the whole pattern of a literal and {@link BigDecimal} say. */
class UsualNumberTest {
  // a literal as the language's page tells it: a minus, digits, a power of ten, spaces, a unit
  private static final Pattern LITERAL =
      Pattern.compile(
          "(?<number>-?(?:\\d+(?:\\.\\d+)?|\\.\\d+)(?:[eE][-+]?\\d+)?) *(?<unit>(?:[\\p{L}%°/]\\S*)?)");
  private static final String LETTERS = "0123456789..  eE-+inmmpsf4/%°é²x\t";

  @Test
  void randomTextIsReadAsThePatternReadsIt() {
    SplittableRandom random = new SplittableRandom(11);
    int plain = 0;
    for (int run = 0; run < 200_000; run++) {
      StringBuilder text = new StringBuilder(random.nextInt(4) == 0 ? "-" : "");
      text.append(random.nextInt(1000));
      for (int i = random.nextInt(8); i > 0; i--) {
        text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
      }
      Optional<UsualNumber> usual = UsualNumber.of(text.toString());
      if (usual.isPresent()) {
        plain++;
        Matcher whole = LITERAL.matcher(text);
        assertThat(whole.matches()).as(text.toString()).isTrue();
        assertThat(usual.get())
            .as(text.toString())
            .isEqualTo(
                new UsualNumber(
                    Rational.of(new BigDecimal(whole.group("number"))),
                    whole.group("unit"),
                    whole.start("unit")));
      }
    }
    assertThat(plain).isGreaterThan(20_000);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "32 psf",
        "9.3545 in4",
        "7",
        "0.29 Btu/hft2F",
        "007.50mm",
        "1 ea",
        "-3 mm",
        "-10 F"
      })
  void plainLiteralsAreReadSo(String literal) {
    assertThat(UsualNumber.of(literal)).isPresent();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        ".5",
        "5.",
        "--3 mm",
        "- 3 mm",
        "−3 mm",
        "-",
        "4.1e6 mm4",
        "1e3",
        "1234567890123456",
        "5 m m",
        "1.2.3",
        "3 °C"
      })
  void othersAreLeftToThePattern(String literal) {
    assertThat(UsualNumber.of(literal)).isEmpty();
  }
}
