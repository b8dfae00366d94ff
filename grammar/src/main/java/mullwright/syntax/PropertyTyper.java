package mullwright.syntax;

import static mullwright.syntax.antlr.WallLexer.*;

import java.util.List;

/**
 * Types the line of a property or part: words stay names, since what they mean is told by the
 * model's tables, not by the grammar.
 */
final class PropertyTyper extends LineTyper {
  PropertyTyper(List<WallToken> line, TypedTokens out) {
    super(line, out);
  }

  /** For a whole line: its first word is the keyword. */
  void typeStatement(StatementKind kind) {
    emit(line.get(0).as(Keywords.type(kind)));
    typeFrom(1);
  }

  @Override
  void word(WallToken token) {
    int remark = Remarks.type(token.getText());
    if (remark > 0 && (rawIs(1, STRING) || rawIs(1, OPEN_STRING))) {
      emit(token.as(remark));
    } else {
      quoted(token);
    }
  }

  @Override
  void quoted(WallToken token) {
    boolean value =
        !previousIs(NOTE, VERIFY, HOLD)
            && (previousIs(PLUS, MINUS, STAR, DIVIDE, SIGN, LPAREN) || operatorFollows());
    emit(value ? token.as(REFERENCE) : token);
  }

  private boolean operatorFollows() {
    WallToken next = raw(1);
    if (next == null) {
      return false;
    }
    return switch (next.getType()) {
      case PLUS, STAR, DIVIDE, PER_DEGREE -> true;
      case MINUS -> next.start() > raw(0).end() && raw(2) != null && raw(2).start() > next.end();
      default -> false;
    };
  }

  @Override
  void number(WallToken token) {
    emit(token);
  }

  @Override
  boolean digitName(WallToken token) {
    boolean unit =
        token.getType() == DASHED
            || unitIn(token.getText()) > 0
                && UnitWords.readsAsUnit(token.getText().substring(unitIn(token.getText())));
    if (!unit) {
      emit(token.as(NAME));
    }
    return !unit;
  }

  @Override
  void comma(WallToken token) {
    emit(token);
  }

  @Override
  boolean operandBefore() {
    return previousIs(NUMBER, LENGTH, UNIT, REFERENCE, RPAREN);
  }
}
