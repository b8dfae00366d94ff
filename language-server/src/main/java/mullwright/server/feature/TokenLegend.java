package mullwright.server.feature;

import com.google.gson.JsonArray;
import com.google.gson.JsonObject;
import mullwright.syntax.TokenKind;

/** Which of the protocol's token types and modifiers each kind of token is shown as. */
enum TokenLegend {
  KEYWORD("keyword"),
  PROPERTY("property"),
  MODIFIER("modifier"),
  DECORATOR("decorator"),
  VARIABLE("variable"),
  NUMBER("number"),
  TYPE("type"),
  STRING("string"),
  OPERATOR("operator"),
  COMMENT("comment");

  /** The only modifiers, by bit. */
  static final int READONLY = 1;

  static final int DOCUMENTATION = 2;

  private final String type;

  TokenLegend(String type) {
    this.type = type;
  }

  /** The type a token is shown as, null for marks that stay plain. */
  static TokenLegend of(TokenKind kind) {
    return switch (kind) {
      case KEYWORD, CLAUSE -> KEYWORD;
      case PROPERTY -> PROPERTY;
      case JOINER, BEARING, DIRECTION -> MODIFIER;
      case REMARK -> DECORATOR;
      case NAME, REFERENCE -> VARIABLE;
      case NUMBER, LENGTH, SIGN -> NUMBER;
      case UNIT -> TYPE;
      case STRING -> STRING;
      case OPERATOR, RANGE -> OPERATOR;
      case COMMENT, DOCUMENTATION -> COMMENT;
      case COMMA, PARENTHESIS, BRACE, UNKNOWN, FAULT -> null;
    };
  }

  static int modifiers(TokenKind kind) {
    return switch (kind) {
      case REFERENCE -> READONLY;
      case DOCUMENTATION -> DOCUMENTATION;
      default -> 0;
    };
  }

  /** As told to the client. */
  static JsonObject json() {
    JsonArray types = new JsonArray();
    for (TokenLegend entry : values()) {
      types.add(entry.type);
    }
    JsonArray modifiers = new JsonArray();
    modifiers.add("readonly");
    modifiers.add("documentation");
    JsonObject legend = new JsonObject();
    legend.add("tokenTypes", types);
    legend.add("tokenModifiers", modifiers);
    return legend;
  }
}
