package mullwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.math.BigInteger;
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

  /** What is refused, and where in the text. */
  static Stream<Arguments> refusals() {
    return Stream.of(
        arguments("5'-6", new QuantityProblem.InchMarkMissing(), 4, 4),
        arguments("5'-6 1/2", new QuantityProblem.InchMarkMissing(), 8, 8),
        arguments("5' 6", new QuantityProblem.InchMarkMissing(), 4, 4),
        arguments("5'- 6\"", new QuantityProblem.SpaceBesideDash(), 2, 4),
        arguments("5' -6\"", new QuantityProblem.SpaceBesideDash(), 2, 4),
        arguments("5' - 6\"", new QuantityProblem.Malformed(), 0, 7),
        arguments("6 1/0\"", new QuantityProblem.ZeroDenominator(), 4, 5),
        arguments("5,5\"", new QuantityProblem.CommaInNumber(), 1, 2),
        arguments("1,200 mm", new QuantityProblem.CommaInNumber(), 1, 2),
        arguments("5.5'-6\"", new QuantityProblem.Malformed(), 0, 7),
        arguments("6.5 1/2\"", new QuantityProblem.Malformed(), 0, 8),
        arguments("6\"5'", new QuantityProblem.Malformed(), 0, 4),
        arguments("\"", new QuantityProblem.Malformed(), 0, 1),
        arguments("5'\"", new QuantityProblem.Malformed(), 0, 3),
        arguments("--5'", new QuantityProblem.Malformed(), 0, 4),
        arguments("+5'", new QuantityProblem.Malformed(), 0, 3),
        arguments("", new QuantityProblem.Malformed(), 0, 0),
        arguments(" 5 mm", new QuantityProblem.Malformed(), 0, 5),
        arguments("66", new QuantityProblem.UnitMissing(), 2, 2),
        arguments("66 in", new QuantityProblem.UnknownUnit("in", List.of("\"")), 3, 5),
        arguments("5 ft", new QuantityProblem.UnknownUnit("ft", List.of("'")), 2, 4),
        arguments("5 MM", new QuantityProblem.UnknownUnit("MM", List.of("mm")), 2, 4),
        arguments("5 ell", new QuantityProblem.UnknownUnit("ell", List.of()), 2, 5),
        arguments(
            "32 psf", new QuantityProblem.WrongKind(Kind.LENGTH, Kind.PRESSURE.dimension()), 0, 6),
        arguments("1/3\"", new QuantityProblem.NotExact(Length.ofNanometres(8_466_667)), 0, 4),
        arguments("0.000001\"", new QuantityProblem.NotExact(Length.ofNanometres(25)), 0, 9),
        arguments("10.00001e3 m", new QuantityProblem.TooLarge(Limit.LENGTH), 0, 12),
        arguments("-32809'", new QuantityProblem.TooLarge(Limit.LENGTH), 0, 7),
        arguments("1e31 mm", new QuantityProblem.TooLarge(Limit.DIGITS), 0, 4),
        arguments("1e999999999 mm", new QuantityProblem.TooLarge(Limit.DIGITS), 0, 11),
        arguments("1".repeat(41) + "'", new QuantityProblem.TooLarge(Limit.DIGITS), 0, 42));
  }

  @ParameterizedTest
  @MethodSource("refusals")
  void refusesWithAPlace(String text, QuantityProblem problem, int start, int end) {
    Outcome<Length> read = LengthReader.read(text);
    assertThat(read.value()).isEmpty();
    assertThat(read.remarks()).containsExactly(new Remark(problem, start, end));
  }

  /** What is read as written, with a warning. */
  static Stream<Arguments> oddities() {
    return Stream.of(
        arguments("5'-13\"", Length.ofInches(73), new QuantityProblem.InchesPastFoot(), 3, 5),
        arguments("5'-12\"", Length.ofInches(72), new QuantityProblem.InchesPastFoot(), 3, 5),
        arguments(
            "3/10\"",
            Length.ofInches(3, 10),
            new QuantityProblem.UnusualDenominator(BigInteger.TEN),
            2,
            4),
        arguments(
            "6 1/128\"",
            Length.ofInches(769, 128),
            new QuantityProblem.UnusualDenominator(BigInteger.valueOf(128)),
            4,
            7),
        arguments("6 3/2\"", Length.ofInches(15, 2), new QuantityProblem.FractionPastOne(), 2, 5));
  }

  @ParameterizedTest
  @MethodSource("oddities")
  void readsWithAWarning(String text, Length value, QuantityProblem problem, int start, int end) {
    Outcome<Length> read = LengthReader.read(text);
    assertThat(read.value()).contains(value);
    assertThat(read.remarks()).containsExactly(new Remark(problem, start, end));
  }

  @Test
  void everyUsualDenominatorIsReadWithoutRemark() {
    for (int denominator = 1; denominator <= 64; denominator *= 2) {
      assertThat(LengthReader.read("1/" + denominator + "\""))
          .isEqualTo(Outcome.of(Length.ofInches(1, denominator)));
    }
  }

  @Test
  void aBareNumberMeansTheUnitOfTheFile() {
    assertThat(LengthReader.read("60", Unit.INCH).value()).contains(Length.ofInches(60));
    assertThat(LengthReader.read("1500", Unit.MILLIMETRE).value())
        .contains(Length.ofMillimetres(1500));
    assertThat(LengthReader.read("2'", Unit.MILLIMETRE).value()).contains(Length.ofInches(24));
    assertThat(LengthReader.read("1 m", Unit.INCH).value()).contains(Length.ofMillimetres(1000));
    assertThat(LengthReader.read("5 %", Unit.INCH).remarks())
        .containsExactly(
            new Remark(new QuantityProblem.WrongKind(Kind.LENGTH, Dimension.NONE), 0, 3));
  }

  @Test
  void theLongestLengthIsReadAndNothingBeyond() {
    assertThat(LengthReader.read("10000 m").value()).contains(Length.LIMIT);
    assertThat(LengthReader.read("-10000 m").value()).contains(Length.LIMIT.negated());
    assertThat(LengthReader.read("10000.000001 m").value()).isEmpty();
  }

  /** Characters of literals and some that are none, so that most texts are nearly lengths. */
  private static final String ALPHABET = "0123456789 '\"-/.,′″’”−eEmcin%°²\n\uD83D\u0661";

  @Test
  void anyTextGivesAnAnswerAndWhatIsReadPrintsAndReadsBack() {
    SplittableRandom random = new SplittableRandom(20_260_101);
    int read = 0;
    for (int i = 0; i < 200_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int n = random.nextInt(10); n >= 0; n--) {
        text.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
      }
      Outcome<Length> outcome = LengthReader.read(text.toString());
      for (Remark remark : outcome.remarks()) {
        assertThat(remark.start()).as(text.toString()).isBetween(0, remark.end());
        assertThat(remark.end()).as(text.toString()).isLessThanOrEqualTo(text.length());
      }
      if (outcome.value().isPresent()) {
        read++;
        for (UnitSystem system : UnitSystem.values()) {
          assertThat(LengthReader.read(LengthPrinter.exact(outcome.value().get(), system)))
              .as(text.toString())
              .isEqualTo(Outcome.of(outcome.value().get()));
        }
      }
    }
    assertThat(read).as("texts that were lengths").isGreaterThan(500);
  }
}
