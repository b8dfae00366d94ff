package mullwright.model;

import mullwright.syntax.Expression;
import mullwright.syntax.Word;

/** A name for a value, as stated and, once computed, with its value. */
final class Let {
  final Word name;
  final Spot spot;
  final Symbol symbol;
  final Expression expression;

  /** What its expression's names mean. */
  final Scope scope;

  /** Null until computed, and if it cannot be computed (which was reported). */
  Value value;

  boolean computed;

  Let(Word name, Spot spot, Symbol symbol, Expression expression, Scope scope) {
    this.name = name;
    this.spot = spot;
    this.symbol = symbol;
    this.expression = expression;
    this.scope = scope;
  }
}
