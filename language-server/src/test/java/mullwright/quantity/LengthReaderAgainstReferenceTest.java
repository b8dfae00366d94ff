package mullwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.OptionalLong;
import java.util.SplittableRandom;
import javax.measure.MetricPrefix;
import javax.measure.Unit;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import systems.uom.common.USCustomary;
import tech.units.indriya.ComparableQuantity;
import tech.units.indriya.function.RationalNumber;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;

/** Reading of lengths against the reference implementation of Units of Measurement (JSR 385). */
class LengthReaderAgainstReferenceTest {
  private static final int SPELLINGS = 600;
  private static final String[] JOINTS = {"-", " ", ""};

  @Test
  void feetInchesAndFractionsAreTheSameToTheTick() {
    SplittableRandom random = new SplittableRandom(5_280);
    for (int i = 0; i < SPELLINGS; i++) {
      int feet = random.nextInt(200);
      int whole = random.nextInt(12);
      int denominator = 2 << random.nextInt(6);
      int numerator = 1 + random.nextInt(denominator - 1);
      String text =
          feet
              + "'"
              + JOINTS[random.nextInt(3)]
              + whole
              + (random.nextBoolean() ? " " : "-")
              + numerator
              + "/"
              + denominator
              + "\"";
      ComparableQuantity<Length> reference =
          length(RationalNumber.of(feet, 1), USCustomary.FOOT)
              .add(length(RationalNumber.of(whole, 1), USCustomary.INCH))
              .add(length(RationalNumber.of(numerator, denominator), USCustomary.INCH));
      boolean negative = random.nextBoolean();
      assertSame((negative ? "-" : "") + text, reference, negative);
    }
  }

  @Test
  void decimalInchesAndMetricAreTheSameToTheTick() {
    SplittableRandom random = new SplittableRandom(1_959);
    for (int i = 0; i < SPELLINGS; i++) {
      int thousandths = random.nextInt(12_000_000);
      BigDecimal decimal = BigDecimal.valueOf(thousandths, 3);
      RationalNumber number = RationalNumber.of(thousandths, 1000);
      String text = decimal.toPlainString();
      assertSame(text + "\"", length(number, USCustomary.INCH), false);
      assertSame(text + " mm", length(number, MetricPrefix.MILLI(Units.METRE)), false);
      assertSame(text + "cm", length(number, MetricPrefix.CENTI(Units.METRE)), false);
      // metres to the millimetre stay below the limit of 10 km only up to 9 999.999
      String metres = BigDecimal.valueOf(thousandths % 10_000_000, 3).toPlainString();
      assertSame(
          metres + " m",
          length(RationalNumber.of(thousandths % 10_000_000, 1000), Units.METRE),
          false);
    }
  }

  /**
   * What is read in one pass is what the pattern of all spellings reads, where it is read at all.
   */
  @Test
  void plainSpellingsMeanWhatThePatternOfAllSpellingsSays() {
    SplittableRandom random = new SplittableRandom(64);
    String[] pieces = {
      "0", "7", "11", "12", "5280", "'", "-", " ", "/", "1/2", "3/64", "4/3", "\""
    };
    int plain = 0;
    for (int i = 0; i < 200_000; i++) {
      StringBuilder text = new StringBuilder();
      for (int piece = random.nextInt(1, 8); piece > 0; piece--) {
        text.append(pieces[random.nextInt(pieces.length)]);
      }
      OptionalLong ticks = UsualLength.ticks(text.toString());
      if (ticks.isPresent()) {
        plain++;
        Outcome<mullwright.quantity.Length> read = LengthReader.anySpelling(text.toString());
        assertThat(read)
            .as("%s", text)
            .isEqualTo(Outcome.of(new mullwright.quantity.Length(ticks.getAsLong())));
      }
    }
    assertThat(plain).isGreaterThan(2_000);
  }

  private static ComparableQuantity<Length> length(RationalNumber number, Unit<Length> unit) {
    return Quantities.getQuantity(number, unit);
  }

  private static void assertSame(
      String text, ComparableQuantity<Length> reference, boolean negative) {
    Number nanometres = reference.to(MetricPrefix.NANO(Units.METRE)).getValue();
    BigDecimal ticks =
        exact(nanometres)
            .multiply(BigDecimal.valueOf(mullwright.quantity.Length.TICKS_PER_NANOMETRE));
    long expected = negative ? -ticks.longValueExact() : ticks.longValueExact();
    Outcome<mullwright.quantity.Length> read = LengthReader.read(text);
    assertThat(read.remarks()).as(text).isEmpty();
    assertThat(read.value()).as(text).contains(new mullwright.quantity.Length(expected));
  }

  private static BigDecimal exact(Number number) {
    return number instanceof RationalNumber fraction
        ? new BigDecimal(fraction.getDividend())
            .divide(new BigDecimal(fraction.getDivisor()), MathContext.UNLIMITED)
        : new BigDecimal(number.toString());
  }
}
