package mullwright.quantity;

import java.math.BigInteger;
import java.util.List;

/**
 * What can be wrong with a written or computed quantity, as data: the words are made where findings
 * are made.
 *
 * <p>Beside a value a problem is a warning; in a refusal it is an error.
 */
public sealed interface QuantityProblem {
  /** The text is no number and no length. */
  record Malformed() implements QuantityProblem {}

  /** A number stands alone where a unit is needed. */
  record UnitMissing() implements QuantityProblem {}

  /**
   * The word after the number is no unit.
   *
   * @param offered spellings that may be meant, best first, perhaps none
   */
  record UnknownUnit(String spelling, List<String> offered) implements QuantityProblem {
    public UnknownUnit {
      offered = List.copyOf(offered);
    }
  }

  /** The quantity is of another kind than the statement asks for. */
  record WrongKind(Kind asked, Dimension found) implements QuantityProblem {}

  /** {@code 5'-6}: inches after feet without their mark. */
  record InchMarkMissing() implements QuantityProblem {}

  /** {@code 5'- 6"}: a space on one side of the dash, so neither one length nor a difference. */
  record SpaceBesideDash() implements QuantityProblem {}

  /** {@code 1,5 mm}: only the point is a decimal mark, and digits are not grouped. */
  record CommaInNumber() implements QuantityProblem {}

  /** A fraction over zero. */
  record ZeroDenominator() implements QuantityProblem {}

  /**
   * Warning: a fraction that no rule or tape shows, because its denominator is no power of two up
   * to 64.
   */
  record UnusualDenominator(BigInteger denominator) implements QuantityProblem {}

  /** Warning: {@code 5'-13"}, twelve or more inches after feet; read as written. */
  record InchesPastFoot() implements QuantityProblem {}

  /** Warning: {@code 6 3/2"}, a fraction of one or more after whole inches; read as written. */
  record FractionPastOne() implements QuantityProblem {}

  /** The length is no whole number of ticks; the nearest whole nanometre is offered. */
  record NotExact(Length nearest) implements QuantityProblem {}

  /** The number is beyond what is read or computed. */
  record TooLarge(Limit limit) implements QuantityProblem {}

  /** The two sides of a sum, difference or product are of kinds that do not go together. */
  record Unlike(Dimension left, Operator operator, Dimension right) implements QuantityProblem {}

  /** A division by zero. */
  record DivisionByZero() implements QuantityProblem {}

  /** The named limits. */
  enum Limit {
    /** No length beyond {@link Length#LIMIT}. */
    LENGTH,
    /**
     * No literal of more than {@link QuantityReader#DIGIT_LIMIT} digits or an exponent beyond
     * ±{@link QuantityReader#EXPONENT_LIMIT}.
     */
    DIGITS,
    /**
     * No intermediate result of more than {@link Quantity#BIT_LIMIT} bits, no exponent of a unit
     * beyond ±12.
     */
    COMPUTATION
  }

  /** The four operations of an expression. */
  enum Operator {
    PLUS,
    MINUS,
    TIMES,
    DIVIDED_BY
  }
}
