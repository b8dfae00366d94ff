package mullwright.quantity;

import mullwright.quantity.QuantityProblem.Limit;
import mullwright.quantity.QuantityProblem.Operator;

/**
 * An exact number with its dimension, in SI base units (and degrees of angle): what an expression
 * computes with.
 *
 * <p>The operations check dimensions and refuse what has no meaning. A result may not take more
 * than {@link #BIT_LIMIT} bits, so no chain of products can eat time or memory.
 *
 * @param si the value in m, kg, s, K, degrees
 */
public record Quantity(Rational si, Dimension dimension) {
  /**
   * The room a result may take, numerator and denominator together; a double needs at most about 2
   * 200.
   */
  public static final int BIT_LIMIT = 4096;

  private static final Rational LARGEST = Rational.of(10).power(QuantityReader.EXPONENT_LIMIT);
  private static final Rational SMALLEST = Rational.ONE.dividedBy(LARGEST);

  /** So many of a unit, such as 32 psf. */
  public static Quantity of(Rational number, Unit unit) {
    return new Quantity(unit.toSi(number), unit.kind().dimension());
  }

  public static Quantity of(Length length) {
    return new Quantity(length.metres(), Kind.LENGTH.dimension());
  }

  /** A plain number. */
  public static Quantity of(Rational number) {
    return new Quantity(number, Dimension.NONE);
  }

  /**
   * A computed value in SI base units (degrees for an angle).
   *
   * @throws NumberFormatException if it is infinite or not a number
   */
  public static Quantity ofSi(double si, Kind kind) {
    return new Quantity(Rational.of(si), kind.dimension());
  }

  public Outcome<Quantity> plus(Quantity other) {
    return alike(other) && !(dimension.point() && other.dimension.point())
        ? checked(si.plus(other.si), either(other))
        : unlike(Operator.PLUS, other);
  }

  public Outcome<Quantity> minus(Quantity other) {
    if (!alike(other) || (other.dimension.point() && !dimension.point())) {
      return unlike(Operator.MINUS, other);
    }
    boolean point = dimension.point() && !other.dimension.point();
    return checked(si.minus(other.si), dimension.asPoint(point));
  }

  public Outcome<Quantity> times(Quantity other) {
    return dimension.point() || other.dimension.point()
        ? unlike(Operator.TIMES, other)
        : checked(si.times(other.si), dimension.times(other.dimension));
  }

  public Outcome<Quantity> dividedBy(Quantity other) {
    if (dimension.point() || other.dimension.point()) {
      return unlike(Operator.DIVIDED_BY, other);
    }
    return other.si.signum() == 0
        ? Outcome.refused(new QuantityProblem.DivisionByZero())
        : checked(si.dividedBy(other.si), dimension.dividedBy(other.dimension));
  }

  public Outcome<Quantity> negated() {
    return dimension.point()
        ? unlike(Operator.MINUS, this)
        : Outcome.of(new Quantity(si.negated(), dimension));
  }

  /**
   * True if it is nothing, or its magnitude in SI base units lies between 10 to the power of
   * &minus;{@link QuantityReader#EXPONENT_LIMIT} and of {@link QuantityReader#EXPONENT_LIMIT}:
   * analysis may then multiply a good many of them as floating-point numbers.
   */
  public boolean isWithinLimit() {
    // nearly all numbers of a wall are told by their bits: 10 to the power of 30 has a hundred
    if (Math.abs(si.numerator().bitLength() - si.denominator().bitLength()) < 99) {
      return true;
    }
    Rational size = si.abs();
    return si.signum() == 0 || (size.compareTo(LARGEST) <= 0 && size.compareTo(SMALLEST) >= 0);
  }

  public boolean is(Kind kind) {
    return dimension.equals(kind.dimension());
  }

  /** This quantity if it is of that kind's dimension, else {@link QuantityProblem.WrongKind}. */
  public Outcome<Quantity> as(Kind kind) {
    return is(kind)
        ? Outcome.of(this)
        : Outcome.refused(new QuantityProblem.WrongKind(kind, dimension));
  }

  /** The exact length, if it is one and {@link Length#ofMetres(Rational)} takes it. */
  public Outcome<Length> toLength() {
    return as(Kind.LENGTH).then(length -> Length.ofMetres(length.si));
  }

  /** The exact number of that unit in it; the unit's dimension must be its own. */
  public Rational in(Unit unit) {
    if (!is(unit.kind())) {
      throw new IllegalArgumentException(dimension.words() + " in " + unit.symbol());
    }
    return unit.fromSi(si);
  }

  /** The SI value as a floating-point number, for analysis. */
  public double toSi() {
    return si.toDouble();
  }

  private boolean alike(Quantity other) {
    return dimension.asPoint(false).equals(other.dimension.asPoint(false));
  }

  private Dimension either(Quantity other) {
    return dimension.asPoint(dimension.point() || other.dimension.point());
  }

  private Outcome<Quantity> unlike(Operator operator, Quantity other) {
    return Outcome.refused(new QuantityProblem.Unlike(dimension, operator, other.dimension));
  }

  private static Outcome<Quantity> checked(Rational si, Dimension dimension) {
    return si.bits() <= BIT_LIMIT && dimension.isWithinLimit()
        ? Outcome.of(new Quantity(si, dimension))
        : Outcome.refused(new QuantityProblem.TooLarge(Limit.COMPUTATION));
  }
}
