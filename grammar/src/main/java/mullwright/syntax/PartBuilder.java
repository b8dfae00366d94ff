package mullwright.syntax;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import mullwright.syntax.antlr.WallParser;
import mullwright.syntax.antlr.WallParser.*;
import mullwright.syntax.antlr.WallParserBaseVisitor;
import org.antlr.v4.runtime.ParserRuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.tree.ParseTree;
import org.antlr.v4.runtime.tree.TerminalNode;

/**
 * Builds what statements and clauses are made of: words, values, selections and places.
 *
 * <p>Every method answers null for a part that was not read to its end, and so does whatever
 * contains it: half a value is no value.
 */
final class PartBuilder {
  private final List<SyntaxProblem> problems;
  private final WallParserBaseVisitor<Place> places = new Places();
  private final WallParserBaseVisitor<Expression> primaries = new Primaries();

  PartBuilder(List<SyntaxProblem> problems) {
    this.problems = problems;
  }

  static boolean broken(ParserRuleContext rule) {
    return rule == null || rule.exception != null;
  }

  static TextRange range(ParserRuleContext rule) {
    WallToken first = (WallToken) rule.getStart();
    WallToken last = (WallToken) rule.getStop();
    return new TextRange(first.start(), Math.max(first.start(), last.end()));
  }

  static TextRange range(TerminalNode node) {
    return range(node.getSymbol());
  }

  static TextRange range(Token token) {
    return ((WallToken) token).range();
  }

  /** A name or text in quotes. */
  static Word word(Token token) {
    String text = token.getText();
    boolean quoted = isQuote(text.charAt(0));
    if (quoted) {
      // an unclosed string in a remark lacks its last quote
      boolean closed = text.length() > 1 && isQuote(text.charAt(text.length() - 1));
      text = text.substring(1, closed ? text.length() - 1 : text.length());
    }
    return new Word(text, quoted, range(token));
  }

  private static boolean isQuote(char c) {
    return c == '"' || c == '\u201c' || c == '\u201d';
  }

  Word name(NameContext name) {
    return broken(name) ? null : word(name.getStart());
  }

  static Expression.Literal count(TerminalNode count) {
    return new Expression.Literal(count.getText(), null, range(count));
  }

  Word direction(DirectionContext direction) {
    return broken(direction) ? null : word(direction.DIRECTION().getSymbol());
  }

  // ---- selections ------------------------------------------------------------------------------

  Selection selection(SelectionContext selection) {
    if (broken(selection)) {
      return null;
    }
    List<Selection.Item> items = new ArrayList<>();
    List<Selection.Item> except = new ArrayList<>();
    List<Selection.Item> here = items;
    Expression.Literal every = null;
    boolean all = false;
    for (ParseTree part : selection.children) {
      if (part instanceof ItemContext context) {
        Selection.Item item = item(context);
        if (item == null) {
          return null;
        }
        here.add(item);
      } else if (part instanceof TerminalNode word) {
        switch (word.getSymbol().getType()) {
          case WallParser.ALL -> all = true;
          case WallParser.EXCEPT -> here = except;
          case WallParser.COUNT -> every = count(word);
          default -> {
            // a comma or the word every
          }
        }
      }
    }
    return new Selection(all, items, except, Optional.ofNullable(every), range(selection));
  }

  private Selection.Item item(ItemContext item) {
    if (broken(item) || broken(item.first) || item.last != null && broken(item.last)) {
      return null;
    }
    return new Selection.Item(name(item.first), item.last == null ? null : name(item.last));
  }

  // ---- places ----------------------------------------------------------------------------------

  Place place(PlaceContext place) {
    return broken(place) ? null : places.visit(place);
  }

  private final class Places extends WallParserBaseVisitor<Place> {
    @Override
    public Place visitOffset(OffsetContext place) {
      Expression offset = expression(place.expression());
      if (offset == null || place.bearing() == null) {
        return offset == null ? null : new Place.FromDatum(offset);
      }
      Selection names = selection(place.selection());
      return broken(place.bearing()) || names == null
          ? null
          : new Place.AtNames(Optional.of(offset), direction(place.bearing()), names, range(place));
    }

    private Place.Direction direction(BearingContext bearing) {
      return switch (bearing.getStart().getType()) {
        case WallParser.ABOVE -> Place.Direction.ABOVE;
        case WallParser.BELOW -> Place.Direction.BELOW;
        case WallParser.RIGHT_OF -> Place.Direction.RIGHT_OF;
        default -> Place.Direction.LEFT_OF;
      };
    }

    @Override
    public Place visitAtNames(AtNamesContext place) {
      Selection names = selection(place.selection());
      return names == null ? null : new Place.AtNames(Optional.empty(), null, names, range(place));
    }

    @Override
    public Place visitFloorBelowSplices(FloorBelowSplicesContext place) {
      return new Place.FloorBelowSplices(range(place));
    }
  }

  // ---- values ----------------------------------------------------------------------------------

  Expression expression(ExpressionContext expression) {
    return operation(expression);
  }

  /** Sums and products: operands with operators between, from left to right. */
  private Expression operation(ParserRuleContext rule) {
    if (broken(rule)) {
      return null;
    }
    int count = rule.getChildCount();
    if (count / 2 > SyntaxLimits.OPERATORS) {
      problems.add(new SyntaxProblem.TooMuch("operators", SyntaxLimits.OPERATORS, range(rule)));
      return null;
    }
    Expression left = operand(rule.getChild(0));
    for (int i = 2; left != null && i < count; i += 2) {
      left = binary(rule.getChild(i - 1).getText(), left, operand(rule.getChild(i)));
    }
    return left;
  }

  private Expression operand(ParseTree part) {
    return part instanceof FactorContext factor ? factor(factor) : operation((TermContext) part);
  }

  private static Expression binary(String operator, Expression left, Expression right) {
    char plain = operator.charAt(0) == '\u2212' ? '-' : operator.charAt(0);
    return right == null ? null : new Expression.Binary(plain, left, right);
  }

  private Expression factor(FactorContext factor) {
    if (broken(factor) || broken(factor.primary())) {
      return null;
    }
    Expression operand = primaries.visit(factor.primary());
    if (operand == null || factor.SIGN() == null) {
      return operand;
    }
    boolean negative = !factor.SIGN().getText().equals("+");
    if (operand instanceof Expression.Literal literal) {
      String number = (negative ? "-" : "") + literal.number();
      return new Expression.Literal(number, literal.unit(), range(factor));
    }
    return negative ? new Expression.Negation(operand, range(factor)) : operand;
  }

  private final class Primaries extends WallParserBaseVisitor<Expression> {
    @Override
    public Expression visitNumber(NumberContext value) {
      Word unit = value.UNIT() == null ? null : word(value.UNIT().getSymbol());
      return new Expression.Literal(
          Literals.spelling(value.NUMBER().getText()), unit, range(value));
    }

    @Override
    public Expression visitLength(LengthContext value) {
      String spelling = Literals.spelling(value.LENGTH().getText());
      return new Expression.Literal(spelling, null, range(value));
    }

    @Override
    public Expression visitReference(ReferenceContext value) {
      return new Expression.Reference(word(value.getStart()));
    }

    @Override
    public Expression visitGroup(GroupContext value) {
      Expression inner = expression(value.expression());
      return inner == null ? null : new Expression.Group(inner, range(value));
    }
  }
}
