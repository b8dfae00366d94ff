package mullwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import mullwright.quantity.LengthFormat.Style;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Printing of lengths: styles, steps, directions of rounding, and chains. */
class LengthFormatTest {
  private static Length inches(String decimal) {
    return Length.nearest(Rational.of(decimal).times(Unit.INCH.factor()));
  }

  /** Common practice of feet, inches and fractions (closed form, recomputed). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "71.23|5'-11 1/4\"|5'-11 7/32\"",
        "71.96875|6'-0\"|5'-11 31/32\"",
        "11.99|1'-0\"|1'-0\"",
        "143.984375|12'-0\"|12'-0\"",
        "57.5|4'-9 1/2\"|4'-9 1/2\"",
        "71.1875|5'-11 3/16\"|5'-11 3/16\"",
        "0|0'-0\"|0'-0\"",
        "-0.01|0'-0\"|0'-0\"",
        "-71.23|-5'-11 1/4\"|-5'-11 7/32\"",
        "-71.96875|-6'-0\"|-5'-11 31/32\"",
        "9|0'-9\"|0'-9\""
      })
  void printsFeetInchesAndFractions(String inches, String to16, String to32) {
    assertThat(LengthFormat.feetInches(Step.SIXTEENTH).print(inches(inches))).isEqualTo(to16);
    assertThat(LengthFormat.feetInches(Step.THIRTY_SECOND).print(inches(inches))).isEqualTo(to32);
  }

  @Test
  void convertsBetweenTheSystems() {
    // CHECK 16, closed form, recomputed: 71 3/16 in is 1808.1625 mm exactly, and 1808.1 mm is
    // 71.18504 in
    Length shop = Length.ofInches(1139, 16);
    assertThat(shop.millimetres()).isEqualTo(new BigDecimal("1808.1625"));
    assertThat(LengthFormat.millimetres(Step.TENTH_MILLIMETRE).print(shop)).isEqualTo("1808.2 mm");
    assertThat(LengthFormat.millimetres(Step.MILLIMETRE).print(shop)).isEqualTo("1808 mm");
    assertThat(LengthFormat.feetInches(Step.SIXTEENTH).print(Length.ofMillimetres(18081, 10)))
        .isEqualTo("5'-11 3/16\"");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "FEET_INCHES|9|0'-9\"",
        "FEET_IF_ANY|9|9\"",
        "FEET_IF_ANY|11.999|1'-0\"",
        "FEET_IF_ANY|12|1'-0\"",
        "FEET_IF_ANY|0|0\"",
        "FEET_IF_ANY|-0.5|-1/2\"",
        "INCHES|71.1875|71 3/16\"",
        "INCHES|0.5|1/2\"",
        "INCHES|-0.01|0\"",
        "INCHES|71.99|72\""
      })
  void eachStyleLooksAsItSays(Style style, String inches, String printed) {
    LengthFormat format = new LengthFormat(style, Step.SIXTEENTH, Rounding.NEAREST);
    assertThat(format.print(inches(inches))).isEqualTo(printed);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "10.0625|10 1/16\"|10 1/16\"|10 1/16\"",
        "10.09|10 1/16\"|10 1/16\"|10 1/8\"",
        "10.12|10 1/8\"|10 1/16\"|10 1/8\"",
        "-0.09|-1/16\"|-1/8\"|-1/16\"",
      })
  void directionsOfRounding(String inches, String nearest, String down, String up) {
    LengthFormat format = LengthFormat.inches(Step.SIXTEENTH);
    assertThat(format.print(inches(inches))).isEqualTo(nearest);
    assertThat(format.rounding(Rounding.DOWN).print(inches(inches))).isEqualTo(down);
    assertThat(format.rounding(Rounding.UP).print(inches(inches))).isEqualTo(up);
  }

  @ParameterizedTest
  @EnumSource(Step.class)
  void roundsAsTheJavaLibraryDoes(Step step) {
    SplittableRandom random = new SplittableRandom(64);
    long ticks = step.length().ticks();
    BigDecimal unit = BigDecimal.valueOf(ticks);
    LongStream random1000 = random.longs(1000, -1000 * ticks, 1000 * ticks);
    LongStream ties = LongStream.rangeClosed(-20, 20).map(n -> n * ticks / 2);
    LongStream.concat(random1000, ties)
        .forEach(
            value -> {
              BigDecimal exact = BigDecimal.valueOf(value);
              for (Rounding rounding : Rounding.values()) {
                RoundingMode mode =
                    switch (rounding) {
                      case NEAREST -> RoundingMode.HALF_UP;
                      case DOWN -> RoundingMode.FLOOR;
                      case UP -> RoundingMode.CEILING;
                    };
                long expected = exact.divide(unit, 0, mode).multiply(unit).longValueExact();
                assertThat(rounding.round(new Length(value), step.length()))
                    .isEqualTo(new Length(expected));
              }
            });
  }

  @Test
  void everyMultipleOfA64thReadsBackInEveryStyle() {
    for (Style style : List.of(Style.FEET_INCHES, Style.FEET_IF_ANY, Style.INCHES)) {
      readsBack(new LengthFormat(style, Step.SIXTY_FOURTH, Rounding.NEAREST), 64 * 12 * 30);
    }
  }

  @Test
  void everyTenthOfAMillimetreReadsBack() {
    readsBack(LengthFormat.millimetres(Step.TENTH_MILLIMETRE), 30_000);
  }

  /** Gathers what does not read back, as a claim a number would be slow. */
  private static void readsBack(LengthFormat format, int steps) {
    assertThat(
            IntStream.rangeClosed(-steps, steps)
                .mapToObj(format.step().length()::times)
                .filter(
                    length -> !LengthReader.read(format.print(length)).equals(Outcome.of(length))))
        .isEmpty();
  }

  @Test
  void styleAndStepMustBeOfOneSystem() {
    assertThatThrownBy(() -> LengthFormat.inches(Step.MILLIMETRE))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Rounding.UP.round(Length.ZERO, Length.ZERO))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aChainAddsUpToItsOverall() {
    // CHECK 16b, common practice (closed form, recomputed): three equal bays in 100 in, to 1/16
    List<Length> bays = Length.ofInches(100).split(3);
    List<Length> printed = ChainRounding.parts(bays, Step.SIXTEENTH.length());
    LengthFormat format = LengthFormat.inches(Step.SIXTEENTH);
    assertThat(printed.stream().map(format::print))
        .containsExactly("33 5/16\"", "33 3/8\"", "33 5/16\"");
    assertThat(printed.stream().reduce(Length.ZERO, Length::plus)).isEqualTo(Length.ofInches(100));
    // each bay rounded alone falls 1/16 short, which is what the chain is for
    assertThat(bays.stream().map(format::round).reduce(Length.ZERO, Length::plus))
        .isEqualTo(Length.ofInches(1599, 16));
  }

  @Test
  void everyChainAddsUpAndNoPartIsMoreThanAStepOff() {
    SplittableRandom random = new SplittableRandom(7);
    for (Step step : Step.values()) {
      List<Length> parts =
          random.longs(200, 1, 60 * Length.TICKS_PER_INCH).mapToObj(Length::new).toList();
      List<Length> printed = ChainRounding.parts(parts, step.length());
      Length overall = parts.stream().reduce(Length.ZERO, Length::plus);
      assertThat(printed.stream().reduce(Length.ZERO, Length::plus))
          .isEqualTo(Rounding.NEAREST.round(overall, step.length()));
      for (int i = 0; i < parts.size(); i++) {
        assertThat(printed.get(i).minus(parts.get(i)).abs()).isLessThanOrEqualTo(step.length());
      }
    }
  }
}
