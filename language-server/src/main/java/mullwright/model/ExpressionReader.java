package mullwright.model;

import java.math.BigInteger;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.Optional;
import mullwright.model.ModelProblem.BadValue;
import mullwright.model.ModelProblem.BadValue.Reason;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.Outcome;
import mullwright.quantity.Quantity;
import mullwright.quantity.QuantityProblem;
import mullwright.quantity.Rational;
import mullwright.quantity.Unit;
import mullwright.syntax.Expression;

/**
 * Computes the values that stand in one segment, exactly and with dimensions checked.
 *
 * <p>A bare number counts ({@code 4 * 5'-0"}); added to a length, or where a length is asked for,
 * it is one in the file's {@code units}. Each method reports what is wrong once and then answers
 * empty.
 */
final class ExpressionReader {
  private static final Map<QuantityProblem.Operator, String> OPERANDS =
      Map.of(
          QuantityProblem.Operator.PLUS, "value added",
          QuantityProblem.Operator.MINUS, "value taken away",
          QuantityProblem.Operator.TIMES, "factor",
          QuantityProblem.Operator.DIVIDED_BY, "divisor");

  private final Scope scope;
  private final Spot spot;
  private final Collector collector;

  ExpressionReader(Scope scope, Spot spot, Collector collector) {
    this.scope = scope;
    this.spot = spot;
    this.collector = collector;
  }

  /** A length, or empty if it is none. */
  Optional<Length> length(Expression expression, String what) {
    return quantity(expression, Kind.LENGTH, what).flatMap(found -> exact(found, expression));
  }

  /** A length with its place. */
  Optional<Given<Length>> given(Expression expression, String what) {
    return length(expression, what)
        .map(length -> Given.stated(length, spot.at(expression.range())));
  }

  /** A quantity of that kind, or empty if it is none. */
  Optional<Quantity> quantity(Expression expression, Kind asked, String what) {
    Value value = value(expression, asked);
    if (value == null) {
      return Optional.empty();
    }
    if (value.bare() && asked == Kind.RATIO) {
      return Optional.of(value.quantity());
    }
    Optional<Quantity> known = value.inUnit(scope.unit());
    Origin origin = spot.at(expression.range());
    if (known.isEmpty() || value.bare() && asked != Kind.LENGTH) {
      String text = spot.text(expression.range());
      collector.problem(new ModelProblem.UnitMissing(what, asked.words(), text, origin));
      return Optional.empty();
    }
    if (!known.get().is(asked)) {
      String found = known.get().dimension().words();
      collector.problem(new ModelProblem.WrongUnit(what, asked.words(), found, origin));
      return Optional.empty();
    }
    if (!known.get().isWithinLimit()) {
      bad(Reason.OUT_OF_RANGE, expression, Optional.empty());
      return Optional.empty();
    }
    return known;
  }

  /** A whole number of at least one, such as a count; {@code most} at most. */
  Optional<Integer> count(Expression.Literal literal, String what, int most) {
    Origin origin = spot.at(literal.range());
    Value value = value(literal, Kind.RATIO);
    if (value == null) {
      return Optional.empty();
    }
    if (!value.bare()) {
      String found = value.quantity().dimension().words();
      collector.problem(new ModelProblem.WrongUnit(what, Kind.RATIO.words(), found, origin));
      return Optional.empty();
    }
    Rational number = value.quantity().si();
    if (!number.isWhole() || number.signum() <= 0) {
      bad(Reason.NOT_A_WHOLE_NUMBER, literal, Optional.empty());
      return Optional.empty();
    }
    BigInteger whole = number.numerator();
    if (whole.compareTo(BigInteger.valueOf(most)) > 0) {
      long asked = whole.min(BigInteger.valueOf(Long.MAX_VALUE)).longValueExact();
      collector.problem(new ModelProblem.TooMany(what, most, asked, origin));
      return Optional.empty();
    }
    return Optional.of(whole.intValueExact());
  }

  /**
   * The value, or null if it cannot be computed (which is reported).
   *
   * @param asked the kind of literals whose unit serves two kinds, or null
   */
  Value value(Expression expression, Kind asked) {
    return value(expression, asked, 0);
  }

  private Value value(Expression expression, Kind asked, int depth) {
    if (depth > Limits.EXPRESSION_DEPTH) {
      Origin origin = spot.at(expression.range());
      collector.problem(
          new ModelProblem.TooMany(
              "parentheses within one another", Limits.EXPRESSION_DEPTH, depth, origin));
      return null;
    }
    // a long sum leans to the left: its left side is walked in a loop, so that it may be any length
    Deque<Expression.Binary> sums = new ArrayDeque<>();
    Expression first = expression;
    while (first instanceof Expression.Binary binary) {
      sums.push(binary);
      first = binary.left();
    }
    Value left = operand(first, asked, depth);
    while (!sums.isEmpty()) {
      Expression.Binary binary = sums.pop();
      Value right = value(binary.right(), asked, depth + 1);
      left = left == null || right == null ? null : combined(binary, left, right);
    }
    return left;
  }

  private Value operand(Expression expression, Kind asked, int depth) {
    if (expression instanceof Expression.Literal literal) {
      return literal(literal, asked);
    }
    if (expression instanceof Expression.Reference reference) {
      return reference(reference);
    }
    if (expression instanceof Expression.Group group) {
      return value(group.inner(), asked, depth + 1);
    }
    if (expression instanceof Expression.Negation negation) {
      Value operand = value(negation.operand(), asked, depth + 1);
      return operand == null
          ? null
          : result(operand.quantity().negated(), operand.bare(), expression);
    }
    throw new IllegalStateException("no such expression: " + expression.getClass());
  }

  private Value literal(Expression.Literal literal, Kind asked) {
    Outcome<Quantity> read = Literals.read(literal, asked);
    boolean bare = literal.unit() == null && !literal.hasMarks();
    return result(read, bare, literal);
  }

  private Value reference(Expression.Reference reference) {
    String name = reference.name().text();
    Let let = scope.find(name);
    if (let == null) {
      collector.unknown("value", name, scope.names(), spot.at(reference.name()));
      return null;
    }
    collector.names(let.symbol, spot.at(reference.name()));
    return let.value;
  }

  private Value combined(Expression.Binary binary, Value left, Value right) {
    char operator = binary.operator();
    boolean bare = left.bare() && right.bare();
    if (operator == '*' || operator == '/') {
      Quantity one = left.quantity();
      Quantity other = right.quantity();
      return result(operator == '*' ? one.times(other) : one.dividedBy(other), bare, binary);
    }
    Quantity one = sided(binary.left(), left, right);
    Quantity other = sided(binary.right(), right, left);
    if (one == null || other == null) {
      return null;
    }
    return result(operator == '+' ? one.plus(other) : one.minus(other), bare, binary);
  }

  /** A bare number beside a length is a length. */
  private Quantity sided(Expression side, Value value, Value beside) {
    if (!value.bare() || beside.bare() || beside.quantity().is(Kind.RATIO)) {
      return value.quantity();
    }
    Unit unit = beside.quantity().is(Kind.LENGTH) ? scope.unit() : null;
    if (unit == null) {
      Origin origin = spot.at(side.range());
      String expected = beside.quantity().dimension().words();
      collector.problem(
          new ModelProblem.UnitMissing("number", expected, spot.text(side.range()), origin));
      return null;
    }
    return Quantity.of(value.quantity().si(), unit);
  }

  private Value result(Outcome<Quantity> outcome, boolean bare, Expression expression) {
    if (outcome.value().isPresent()) {
      return new Value(outcome.value().get(), bare);
    }
    refused(outcome.remarks().get(0).problem(), expression);
    return null;
  }

  private Optional<Length> exact(Quantity quantity, Expression expression) {
    Outcome<Length> length = quantity.toLength();
    if (length.value().isPresent()) {
      return length.value();
    }
    QuantityProblem problem = length.remarks().get(0).problem();
    if (problem instanceof QuantityProblem.NotExact && divides(expression)) {
      bad(Reason.DIVISION_NOT_EXACT, expression, EqualSpaces.offer(expression, spot));
    } else {
      refused(problem, expression);
    }
    return Optional.empty();
  }

  private static boolean divides(Expression expression) {
    Expression at = expression;
    while (at instanceof Expression.Group group) {
      at = group.inner();
    }
    return !(at instanceof Expression.Literal);
  }

  private void refused(QuantityProblem problem, Expression expression) {
    if (problem instanceof QuantityProblem.Unlike unlike) {
      String what = OPERANDS.get(unlike.operator());
      collector.problem(
          new ModelProblem.WrongUnit(
              what, unlike.left().words(), unlike.right().words(), spot.at(expression.range())));
    } else if (problem instanceof QuantityProblem.DivisionByZero
        || problem instanceof QuantityProblem.ZeroDenominator) {
      bad(Reason.DIVISION_BY_ZERO, expression, Optional.empty());
    } else if (problem instanceof QuantityProblem.TooLarge) {
      bad(Reason.OUT_OF_RANGE, expression, Optional.empty());
    } else if (problem instanceof QuantityProblem.NotExact inexact) {
      Optional<String> nearest = Optional.of(EqualSpaces.print(inexact.nearest()));
      bad(Reason.OUT_OF_RANGE, expression, nearest);
    } else if (problem instanceof QuantityProblem.UnknownUnit unknown) {
      bad(Reason.NOT_READABLE, expression, unknown.offered().stream().findFirst());
    } else if (!spot.broken(expression.range())) {
      bad(Reason.NOT_READABLE, expression, Optional.empty());
    }
  }

  private void bad(Reason reason, Expression expression, Optional<String> offer) {
    String text = spot.text(expression.range());
    collector.problem(new BadValue(reason, text, offer, spot.at(expression.range())));
  }
}
