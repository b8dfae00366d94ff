package mullwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import tech.units.indriya.function.RationalNumber;

/** Exact fractions, against the fractions of the JSR 385 reference implementation. */
class RationalTest {
  @Test
  void arithmeticAgreesWithTheReference() {
    SplittableRandom random = new SplittableRandom(385);
    for (int i = 0; i < 2_000; i++) {
      long a = random.nextLong(-1_000_000, 1_000_000);
      long b = random.nextLong(1, 1_000_000);
      long c = random.nextLong(1, 1_000_000);
      long d = random.nextLong(-1_000_000, -1);
      Rational one = Rational.of(a, b);
      Rational other = Rational.of(c, d);
      RationalNumber refOne = RationalNumber.of(a, b);
      RationalNumber refOther = RationalNumber.of(c, d);
      assertSame(one.plus(other), refOne.add(refOther));
      assertSame(one.minus(other), refOne.subtract(refOther));
      assertSame(one.times(other), refOne.multiply(refOther));
      assertSame(one.dividedBy(other), refOne.divide(refOther));
      assertThat(Integer.signum(one.compareTo(other)))
          .isEqualTo(Integer.signum(refOne.compareTo(refOther)));
    }
  }

  /** On both sides of what fits a machine word, against the greatest divisor of the JDK. */
  @Test
  void lowestTermsAreTheSameForNumbersOfAnySize() {
    SplittableRandom random = new SplittableRandom(61);
    for (int bits = 1; bits <= 70; bits++) {
      for (int i = 0; i < 50; i++) {
        BigInteger common = BigInteger.valueOf(random.nextLong(1, 1L << 20));
        BigInteger numerator =
            BigInteger.TWO.pow(bits).subtract(BigInteger.valueOf(random.nextLong(4))).negate();
        BigInteger denominator =
            BigInteger.TWO.pow(71 - bits).add(BigInteger.valueOf(random.nextLong(4)));
        Rational ours = new Rational(numerator.multiply(common), denominator.multiply(common));
        BigInteger divisor = numerator.gcd(denominator);
        assertThat(ours.numerator()).isEqualTo(numerator.divide(divisor));
        assertThat(ours.denominator()).isEqualTo(denominator.divide(divisor));
      }
    }
  }

  private static void assertSame(Rational ours, RationalNumber reference) {
    BigInteger crossed = ours.numerator().multiply(reference.getDivisor());
    assertThat(crossed).isEqualTo(ours.denominator().multiply(reference.getDividend()));
    assertThat(ours.denominator()).isPositive();
    assertThat(ours.numerator().gcd(ours.denominator())).isEqualTo(BigInteger.ONE);
  }

  @Test
  void equalNumbersAreEqualRecords() {
    assertThat(Rational.of(2, 4)).isEqualTo(Rational.of(-1, -2)).hasToString("1/2");
    assertThat(Rational.of(0, -7)).isEqualTo(Rational.ZERO).hasToString("0");
    assertThat(Rational.of("0.50")).isEqualTo(Rational.of(0.5));
    assertThat(Rational.of(new BigDecimal("1.5e3"))).isEqualTo(Rational.of(1500));
    assertThat(Rational.of(-0.0)).isEqualTo(Rational.ZERO);
  }

  @Test
  void zeroDividesNothing() {
    assertThatThrownBy(() -> Rational.of(1, 0)).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> Rational.ONE.dividedBy(Rational.ZERO))
        .isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> Rational.ZERO.power(-1)).isInstanceOf(ArithmeticException.class);
    assertThatThrownBy(() -> Rational.of(Double.POSITIVE_INFINITY))
        .isInstanceOf(NumberFormatException.class);
  }

  @Test
  void powersRoundingsAndDecimals() {
    assertThat(Rational.of(2, 3).power(3)).isEqualTo(Rational.of(8, 27));
    assertThat(Rational.of(2, 3).power(-2)).isEqualTo(Rational.of(9, 4));
    assertThat(Rational.of(-5, 2).rounded(RoundingMode.HALF_UP)).isEqualTo(-3);
    assertThat(Rational.of(-5, 2).rounded(RoundingMode.FLOOR)).isEqualTo(-3);
    assertThat(Rational.of(2, 3).toDecimal(2, RoundingMode.HALF_UP)).isEqualTo("0.67");
    assertThat(Rational.of(2, 3).toDigits(4)).isEqualTo("0.6667");
    assertThat(Rational.of(-2, 3).abs()).isEqualTo(Rational.of(2, 3));
  }

  /**
   * Against the JDK's own exact decimals; halves, zeros, the smallest and the largest among them.
   */
  @Test
  void everyDoubleComesBack() {
    SplittableRandom random = new SplittableRandom(754);
    double[] edges = {0, -0.0, 0.5, -3, 6, Double.MIN_VALUE, Double.MIN_NORMAL, Double.MAX_VALUE};
    for (int i = 0; i < 2_000; i++) {
      double value =
          i < edges.length
              ? edges[i]
              : i % 2 == 0
                  ? Double.longBitsToDouble(random.nextLong())
                  : random.nextInt(-5_000, 5_000) / 64.0;
      if (Double.isFinite(value)) {
        assertThat(Rational.of(value))
            .isEqualTo(Rational.of(new BigDecimal(value)))
            .extracting(Rational::toDouble)
            .isEqualTo(value == 0 ? 0.0 : value);
      }
    }
  }
}
