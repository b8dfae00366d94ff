package mullwright.model;

import java.util.Optional;
import mullwright.quantity.Kind;
import mullwright.quantity.Length;
import mullwright.quantity.LengthPrinter;
import mullwright.quantity.Quantity;
import mullwright.quantity.UnitSystem;
import mullwright.syntax.Expression;

/** Finds the equal spacing that a division of a length was meant for. */
final class EqualSpaces {
  private EqualSpaces() {}

  /** {@code spaced 7 equal in 30'-0"} for {@code 30'-0" / 7}; empty for other expressions. */
  static Optional<String> offer(Expression expression, Spot spot) {
    Expression at = expression;
    while (at instanceof Expression.Group group) {
      at = group.inner();
    }
    if (at instanceof Expression.Binary division
        && division.operator() == '/'
        && division.right() instanceof Expression.Literal parts
        && parts.unit() == null
        && !parts.hasMarks()) {
      Optional<Quantity> count = Literals.read(parts, Kind.RATIO).value();
      if (count.isPresent() && count.get().si().isWhole() && count.get().si().signum() > 0) {
        String total = spot.text(division.left().range());
        return Optional.of("spaced " + parts.number() + " equal in " + total);
      }
    }
    return Optional.empty();
  }

  /** A length exactly, in the system it is shortest in. */
  static String print(Length length) {
    String inches = LengthPrinter.exact(length, UnitSystem.US);
    String metric = LengthPrinter.exact(length, UnitSystem.SI);
    return inches.length() <= metric.length() ? inches : metric;
  }
}
