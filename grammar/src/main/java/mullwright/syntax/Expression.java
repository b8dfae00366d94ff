package mullwright.syntax;

/** A value as written: a literal with its unit, a name, or an arithmetic of these. */
public sealed interface Expression {
  /** Where it stands. */
  TextRange range();

  /**
   * A number or length as written: {@code 5'-6 1/2"}, {@code 3/8"}, {@code 1200}, {@code 32 psf}.
   *
   * @param number the digits and marks as written (feet and inch marks included, unit word not)
   * @param unit the unit word after it, or null for a bare number and for feet-inch literals
   * @param range number and unit
   */
  record Literal(String number, Word unit, TextRange range) implements Expression {
    /** True if the literal carries its own feet or inch marks. */
    public boolean hasMarks() {
      return number.indexOf('\'') >= 0
          || number.indexOf('"') >= 0
          || number.indexOf('\u2032') >= 0
          || number.indexOf('\u2033') >= 0
          || number.indexOf('\u2019') >= 0
          || number.indexOf('\u201d') >= 0;
    }
  }

  /** A name standing for a value ({@code let}). */
  record Reference(Word name) implements Expression {
    @Override
    public TextRange range() {
      return name.range();
    }
  }

  /** {@code left + right}, and so for {@code - * /}. */
  record Binary(char operator, Expression left, Expression right) implements Expression {
    @Override
    public TextRange range() {
      return left.range().to(right.range());
    }
  }

  /** A sign before a value that is not a literal; a literal keeps its sign in its number. */
  record Negation(Expression operand, TextRange range) implements Expression {}

  /** {@code ( inner )}. */
  record Group(Expression inner, TextRange range) implements Expression {}
}
