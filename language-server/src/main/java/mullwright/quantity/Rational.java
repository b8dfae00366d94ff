package mullwright.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * An exact fraction in lowest terms, for arithmetic that may not round.
 *
 * <p>The denominator is positive, zero is 0/1, so equal numbers are equal records. Size is not
 * limited here; {@link Quantity} keeps what a user writes within {@link Quantity#BIT_LIMIT} bits.
 */
public record Rational(BigInteger numerator, BigInteger denominator)
    implements Comparable<Rational> {
  /** Whole numbers of so many bits are doubles without rounding. */
  private static final int EXACT_BITS = 53;

  /** Bits of a quotient that decide its nearest double, with some to spare. */
  private static final int QUOTIENT_BITS = 66;

  public static final Rational ZERO = of(0);
  public static final Rational ONE = of(1);

  /**
   * Reduces the fraction to lowest terms.
   *
   * @throws ArithmeticException if the denominator is zero
   */
  public Rational {
    if (denominator.signum() == 0) {
      throw new ArithmeticException("a fraction with denominator zero");
    }
    if (!denominator.equals(BigInteger.ONE)) {
      BigInteger divisor = divisor(numerator, denominator);
      if (denominator.signum() < 0) {
        divisor = divisor.negate();
      }
      if (!divisor.equals(BigInteger.ONE)) {
        numerator = numerator.divide(divisor);
        denominator = denominator.divide(divisor);
      }
    }
  }

  // nearly all numbers of a wall are small, and theirs is found many times quicker
  private static BigInteger divisor(BigInteger numerator, BigInteger denominator) {
    if (denominator.signum() > 0 && denominator.bitCount() == 1 && numerator.signum() != 0) {
      // a power of two, as the denominator of every floating-point number is
      int twos = Math.min(numerator.getLowestSetBit(), denominator.getLowestSetBit());
      return twos == 0 ? BigInteger.ONE : BigInteger.ONE.shiftLeft(twos);
    }
    if (numerator.bitLength() >= Long.SIZE - 1 || denominator.bitLength() >= Long.SIZE - 1) {
      return numerator.gcd(denominator);
    }
    long divisor = Math.abs(denominator.longValue());
    long rest = Math.abs(numerator.longValue()) % divisor;
    while (rest != 0) {
      long next = divisor % rest;
      divisor = rest;
      rest = next;
    }
    return BigInteger.valueOf(divisor);
  }

  public static Rational of(long whole) {
    return of(BigInteger.valueOf(whole));
  }

  public static Rational of(BigInteger whole) {
    return new Rational(whole, BigInteger.ONE);
  }

  public static Rational of(long numerator, long denominator) {
    return new Rational(BigInteger.valueOf(numerator), BigInteger.valueOf(denominator));
  }

  /** The exact value of a decimal. */
  public static Rational of(BigDecimal decimal) {
    return decimal.scale() <= 0
        ? of(decimal.toBigIntegerExact())
        : new Rational(decimal.unscaledValue(), BigInteger.TEN.pow(decimal.scale()));
  }

  /** The exact value of decimal text such as {@code 0.45359237}; for constants in code. */
  public static Rational of(String decimal) {
    return of(new BigDecimal(decimal));
  }

  /**
   * The exact value of a binary floating-point number.
   *
   * @throws NumberFormatException if it is infinite or not a number
   */
  public static Rational of(double value) {
    if (!Double.isFinite(value)) {
      throw new NumberFormatException(value + " is no number a fraction can be");
    }
    if (value == 0) {
      return ZERO;
    }
    // value = significand × 2^exponent, its last bit set so that it is in lowest terms at once
    int exponent = Math.max(Math.getExponent(value), Double.MIN_EXPONENT) - EXACT_BITS + 1;
    long significand = (long) Math.scalb(value, -exponent);
    int zeros = Long.numberOfTrailingZeros(significand);
    BigInteger odd = BigInteger.valueOf(significand >> zeros);
    exponent += zeros;
    return exponent >= 0
        ? of(odd.shiftLeft(exponent))
        : new Rational(odd, BigInteger.ONE.shiftLeft(-exponent));
  }

  public Rational plus(Rational other) {
    if (denominator.equals(other.denominator)) {
      return new Rational(numerator.add(other.numerator), denominator);
    }
    return new Rational(
        numerator.multiply(other.denominator).add(other.numerator.multiply(denominator)),
        denominator.multiply(other.denominator));
  }

  public Rational minus(Rational other) {
    return plus(other.negated());
  }

  public Rational times(Rational other) {
    return new Rational(
        numerator.multiply(other.numerator), denominator.multiply(other.denominator));
  }

  public Rational times(long factor) {
    return times(of(factor));
  }

  /**
   * The exact quotient.
   *
   * @throws ArithmeticException if the other is zero
   */
  public Rational dividedBy(Rational other) {
    return new Rational(
        numerator.multiply(other.denominator), denominator.multiply(other.numerator));
  }

  /**
   * The whole power, negative exponents included.
   *
   * @throws ArithmeticException for a negative power of zero
   */
  public Rational power(int exponent) {
    return exponent >= 0
        ? new Rational(numerator.pow(exponent), denominator.pow(exponent))
        : new Rational(denominator.pow(-exponent), numerator.pow(-exponent));
  }

  public Rational negated() {
    return new Rational(numerator.negate(), denominator);
  }

  public Rational abs() {
    return signum() < 0 ? negated() : this;
  }

  public int signum() {
    return numerator.signum();
  }

  public boolean isWhole() {
    return denominator.equals(BigInteger.ONE);
  }

  /** The nearest whole number in the sense of the given mode. */
  public BigInteger rounded(RoundingMode mode) {
    return toDecimal(0, mode).toBigIntegerExact();
  }

  /** The value with so many decimals, rounded once. */
  public BigDecimal toDecimal(int decimals, RoundingMode mode) {
    return new BigDecimal(numerator).divide(new BigDecimal(denominator), decimals, mode);
  }

  /** The value with so many significant digits, rounded once, half up on the magnitude. */
  public BigDecimal toDigits(int digits) {
    return new BigDecimal(numerator)
        .divide(new BigDecimal(denominator), new MathContext(digits, RoundingMode.HALF_UP));
  }

  /** The nearest floating-point number. */
  public double toDouble() {
    // two whole numbers that a double holds exactly divide to the nearest double
    if (numerator.bitLength() <= EXACT_BITS && denominator.bitLength() <= EXACT_BITS) {
      return (double) numerator.longValue() / denominator.longValue();
    }
    // so many leading bits of the quotient that what is cut off can only break a tie, which the
    // last bit then tells: the rounding of the whole number is that of the fraction
    int shift = QUOTIENT_BITS - numerator.bitLength() + denominator.bitLength();
    BigInteger over = shift > 0 ? numerator.shiftLeft(shift) : numerator;
    BigInteger under = shift < 0 ? denominator.shiftLeft(-shift) : denominator;
    BigInteger[] quotient = over.abs().divideAndRemainder(under);
    BigInteger leading = quotient[1].signum() == 0 ? quotient[0] : quotient[0].setBit(0);
    return signum() * Math.scalb(leading.doubleValue(), -shift);
  }

  /** The room its two numbers take together, in bits. */
  int bits() {
    return numerator.bitLength() + denominator.bitLength();
  }

  @Override
  public int compareTo(Rational other) {
    return numerator.multiply(other.denominator).compareTo(other.numerator.multiply(denominator));
  }

  /** {@code 3/4}, or {@code 3} for a whole number. */
  @Override
  public String toString() {
    return isWhole() ? numerator.toString() : numerator + "/" + denominator;
  }
}
