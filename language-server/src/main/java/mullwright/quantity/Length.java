package mullwright.quantity;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * An exact length, held as a whole number of ticks of 1/16 nanometre.
 *
 * <p>A nanometre alone holds 1/64" (396 875 nm) and 0.001 mm, but not half of 1/64", and half a
 * face is in nearly every result ("spacing − ½ left − ½ right"). Rounding that half to a nanometre
 * would show: a length halfway between two sixteenths would fall to the wrong one. So the tick is
 * finer: a length in 64ths of an inch or whole nanometres can be halved four times over and stay
 * exact ({@link #half()}).
 *
 * <p>Text may say up to {@link #LIMIT} (10 km) either way. A {@code long} of ticks holds 57
 * thousand times that, more than the sum of all pieces of any tower; should a sum overflow all the
 * same, it is an {@link ArithmeticException} and never a wrong number.
 */
public record Length(long ticks) implements Comparable<Length> {
  /** Ticks in one nanometre. */
  public static final long TICKS_PER_NANOMETRE = 16;

  /** Ticks in one millimetre. */
  public static final long TICKS_PER_MILLIMETRE = 1_000_000 * TICKS_PER_NANOMETRE;

  /** Ticks in one inch: 25.4 mm exactly (international yard and pound agreement, 1959). */
  public static final long TICKS_PER_INCH = 25_400_000 * TICKS_PER_NANOMETRE;

  private static final long TICKS_PER_METRE = 1_000 * TICKS_PER_MILLIMETRE;

  public static final Length ZERO = new Length(0);

  /** The longest length that text may say, 10 km. */
  public static final Length LIMIT = new Length(10_000 * TICKS_PER_METRE);

  public static Length ofNanometres(long nanometres) {
    return new Length(Math.multiplyExact(nanometres, TICKS_PER_NANOMETRE));
  }

  public static Length ofMillimetres(long millimetres) {
    return new Length(Math.multiplyExact(millimetres, TICKS_PER_MILLIMETRE));
  }

  /**
   * The fraction of a millimetre, exactly; for constants in code.
   *
   * @throws ArithmeticException if it is no whole number of ticks
   */
  public static Length ofMillimetres(long numerator, long denominator) {
    return exact(numerator, denominator, TICKS_PER_MILLIMETRE);
  }

  public static Length ofInches(long inches) {
    return new Length(Math.multiplyExact(inches, TICKS_PER_INCH));
  }

  /**
   * The fraction of an inch, exactly; for constants in code.
   *
   * @throws ArithmeticException if it is no whole number of ticks
   */
  public static Length ofInches(long numerator, long denominator) {
    return exact(numerator, denominator, TICKS_PER_INCH);
  }

  private static Length exact(long numerator, long denominator, long unit) {
    Rational ticks = Rational.of(numerator, denominator).times(unit);
    if (!ticks.isWhole()) {
      throw new ArithmeticException("no whole number of ticks: " + ticks);
    }
    return new Length(ticks.numerator().longValueExact());
  }

  /**
   * The length nearest to a computed number of metres, such as a movement or a deflection.
   *
   * @throws NumberFormatException if it is infinite or not a number
   * @throws ArithmeticException if it does not fit
   */
  public static Length nearest(double metres) {
    return nearest(Rational.of(metres));
  }

  /**
   * The length nearest to a computed number of metres, half to even.
   *
   * @throws ArithmeticException if it does not fit
   */
  public static Length nearest(Rational metres) {
    Rational ticks = metres.times(TICKS_PER_METRE);
    return new Length(ticks.rounded(RoundingMode.HALF_EVEN).longValueExact());
  }

  /**
   * The length of so many metres, if it is exact and no longer than {@link #LIMIT}; else {@link
   * QuantityProblem.NotExact} with the nearest nanometre, or {@link QuantityProblem.TooLarge}.
   */
  public static Outcome<Length> ofMetres(Rational metres) {
    Rational ticks = metres.times(TICKS_PER_METRE);
    if (ticks.abs().compareTo(Rational.of(LIMIT.ticks)) > 0) {
      return Outcome.refused(new QuantityProblem.TooLarge(QuantityProblem.Limit.LENGTH));
    }
    return ticks.isWhole()
        ? Outcome.of(new Length(ticks.numerator().longValueExact()))
        : Outcome.refused(new QuantityProblem.NotExact(nearestNanometre(ticks)));
  }

  private static Length nearestNanometre(Rational ticks) {
    Rational nanometres = ticks.dividedBy(Rational.of(TICKS_PER_NANOMETRE));
    return ofNanometres(nanometres.rounded(RoundingMode.HALF_UP).longValueExact());
  }

  public Length plus(Length other) {
    return new Length(Math.addExact(ticks, other.ticks));
  }

  public Length minus(Length other) {
    return new Length(Math.subtractExact(ticks, other.ticks));
  }

  public Length times(long count) {
    return new Length(Math.multiplyExact(ticks, count));
  }

  public Length negated() {
    return new Length(Math.negateExact(ticks));
  }

  public Length abs() {
    return ticks < 0 ? negated() : this;
  }

  /**
   * Half of it: exact for 64ths of an inch and whole nanometres up to four halvings in a row,
   * beyond that the even neighbour (1/32 nm off).
   */
  public Length half() {
    long below = ticks >> 1;
    // an odd number of ticks lies between two whole ones: take the even one
    return new Length(below + (ticks & below & 1));
  }

  /**
   * What is left between two neighbours: {@code this − ½ left − ½ right}, exact like {@link
   * #half()}.
   */
  public Length lessHalves(Length left, Length right) {
    return minus(left.plus(right).half());
  }

  /**
   * The product with a fraction, to the nearest tick (half to even): for places and shares that
   * need not come out, such as the quarter point of an opening.
   *
   * @throws ArithmeticException if the denominator is zero or the result does not fit
   */
  public Length scaled(long numerator, long denominator) {
    BigInteger product = BigInteger.valueOf(ticks).multiply(BigInteger.valueOf(numerator));
    return new Length(
        new BigDecimal(product)
            .divide(BigDecimal.valueOf(denominator), 0, RoundingMode.HALF_EVEN)
            .longValueExact());
  }

  /**
   * So many equal parts whose sum is this length: what does not come out (less than a nanometre for
   * any real count) falls to the last part.
   *
   * @throws IllegalArgumentException if there is not at least one part
   */
  public List<Length> split(int parts) {
    if (parts < 1) {
      throw new IllegalArgumentException("parts: " + parts);
    }
    Length part = new Length(ticks / parts);
    List<Length> result = new ArrayList<>(parts);
    for (int i = 1; i < parts; i++) {
      result.add(part);
    }
    result.add(minus(part.times(parts - 1L)));
    return List.copyOf(result);
  }

  public static Length min(Length one, Length other) {
    return one.ticks <= other.ticks ? one : other;
  }

  public static Length max(Length one, Length other) {
    return one.ticks >= other.ticks ? one : other;
  }

  public int signum() {
    return Long.signum(ticks);
  }

  public boolean isLongerThan(Length other) {
    return ticks > other.ticks;
  }

  public boolean isShorterThan(Length other) {
    return ticks < other.ticks;
  }

  @Override
  public int compareTo(Length other) {
    return Long.compare(ticks, other.ticks);
  }

  /** The exact number of metres. */
  public Rational metres() {
    return Rational.of(ticks, TICKS_PER_METRE);
  }

  /** The exact number of inches. */
  public Rational inches() {
    return Rational.of(ticks, TICKS_PER_INCH);
  }

  /** The exact number of millimetres, a finite decimal without trailing zeros. */
  public BigDecimal millimetres() {
    BigDecimal exact = BigDecimal.valueOf(ticks).divide(BigDecimal.valueOf(TICKS_PER_MILLIMETRE));
    return exact.signum() == 0 ? BigDecimal.ZERO : exact.stripTrailingZeros();
  }

  /** Metres as a floating-point number, for analysis. */
  public double toMetres() {
    return (double) ticks / TICKS_PER_METRE;
  }

  /** Millimetres as a floating-point number, for drawing. */
  public double toMillimetres() {
    return (double) ticks / TICKS_PER_MILLIMETRE;
  }

  /** Inches as a floating-point number, for analysis. */
  public double toInches() {
    return (double) ticks / TICKS_PER_INCH;
  }

  /** The exact length in millimetres, for people who debug. */
  @Override
  public String toString() {
    return millimetres().toPlainString() + " mm";
  }

  // a record's own way is made at run time, which every start would pay for
  @Override
  public boolean equals(Object other) {
    return other instanceof Length length && length.ticks == ticks;
  }

  @Override
  public int hashCode() {
    return Long.hashCode(ticks);
  }
}
