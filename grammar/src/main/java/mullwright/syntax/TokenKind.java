package mullwright.syntax;

import static mullwright.syntax.antlr.WallLexer.*;

/** What a token is, for whoever colours or lays out the text. */
public enum TokenKind {
  /** The first word of a statement. */
  KEYWORD,
  /** The first word of a property or of a catalog part. */
  PROPERTY,
  /** A word that opens a clause, both words of {@code isolated by}. */
  CLAUSE,
  /** A word that joins: {@code all}, {@code except}, {@code above}, {@code to} … */
  JOINER,
  /** {@code above}, {@code below}, {@code right of}, {@code left of} and {@code of} itself. */
  BEARING,
  /** {@code in}, {@code out}, {@code right}, {@code behind} … after a value. */
  DIRECTION,
  /** {@code note}, {@code verify}, {@code hold}. */
  REMARK,
  NAME,
  /** A name that stands for a value. */
  REFERENCE,
  /** A number or a count. */
  NUMBER,
  /** Feet and inches with their marks. */
  LENGTH,
  UNIT,
  STRING,
  OPERATOR,
  /** A sign before a value. */
  SIGN,
  COMMA,
  RANGE,
  PARENTHESIS,
  BRACE,
  COMMENT,
  /** A {@code ///} comment. */
  DOCUMENTATION,
  /** A word the block does not know. */
  UNKNOWN,
  /** What cannot be read. */
  FAULT;

  /** The kind of a typed token of the grammar. */
  static TokenKind of(int type) {
    if (type >= AT && type <= MIRRORED) {
      return CLAUSE;
    }
    return switch (type) {
      case CATALOG_PART, mullwright.syntax.antlr.WallLexer.PROPERTY -> PROPERTY;
      case mullwright.syntax.antlr.WallLexer.UNKNOWN -> UNKNOWN;
      case BY, ON, OTHERS -> CLAUSE;
      case ALL, EXCEPT, EVERY, TO, FLOOR_WORD, SPLICES, EQUAL, IN, TIMES, ARM -> JOINER;
      case ABOVE, BELOW, RIGHT_OF, LEFT_OF, OF -> BEARING;
      case mullwright.syntax.antlr.WallLexer.DIRECTION, GLASS -> DIRECTION;
      case NOTE, VERIFY, HOLD -> REMARK;
      case mullwright.syntax.antlr.WallLexer.NAME -> NAME;
      case mullwright.syntax.antlr.WallLexer.REFERENCE -> REFERENCE;
      case mullwright.syntax.antlr.WallLexer.NUMBER, COUNT -> NUMBER;
      case mullwright.syntax.antlr.WallLexer.LENGTH -> LENGTH;
      case mullwright.syntax.antlr.WallLexer.UNIT -> UNIT;
      case mullwright.syntax.antlr.WallLexer.STRING -> STRING;
      case mullwright.syntax.antlr.WallLexer.SIGN -> SIGN;
      case PLUS, MINUS, STAR, DIVIDE, EACH, ASSIGN -> OPERATOR;
      case mullwright.syntax.antlr.WallLexer.COMMA, ITEM_COMMA -> COMMA;
      case mullwright.syntax.antlr.WallLexer.RANGE -> RANGE;
      case LPAREN, RPAREN -> PARENTHESIS;
      case LBRACE, RBRACE -> BRACE;
      default -> type >= USE && type <= STICK ? KEYWORD : FAULT;
    };
  }
}
