package mullwright.model;

import mullwright.quantity.Kind;
import mullwright.quantity.Outcome;
import mullwright.quantity.Quantity;
import mullwright.quantity.QuantityProblem;
import mullwright.quantity.QuantityReader;
import mullwright.syntax.Expression;

/** Reads the literals of the tree. */
final class Literals {
  private Literals() {}

  /**
   * The quantity as written; where a unit's spelling serves two kinds, the kind asked for is meant.
   */
  static Outcome<Quantity> read(Expression.Literal literal, Kind asked) {
    String text =
        literal.unit() == null ? literal.number() : literal.number() + " " + literal.unit().text();
    if (asked == null || literal.unit() == null) {
      return QuantityReader.read(text);
    }
    Outcome<Quantity> read = QuantityReader.read(text, asked);
    boolean otherKind =
        read.value().isEmpty()
            && read.remarks().get(0).problem() instanceof QuantityProblem.WrongKind;
    return otherKind ? QuantityReader.read(text) : read;
  }
}
