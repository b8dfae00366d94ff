/**
 * What the text is cut into, before any word has a meaning.
 *
 * There are no keywords here: a word is a NAME, and the token step gives it the type of a statement
 * word, clause word or unit where its place on the line makes it one. Rules are loose on purpose
 * where the token step can tell a drafter more than "unexpected character".
 */
lexer grammar WallLexer;

@members {
  /** True if a comment whose beginning was just read has an end somewhere. */
  protected boolean commentEnds() {
    return true;
  }
}

tokens {
  // statement words; each is named as its StatementKind
  USE, LET, UNITS, PROJECT_BLOCK, CATALOG_BLOCK, WALL_BLOCK, CRITERIA_BLOCK, CATALOG_PART, PROPERTY,
  GRID_BLOCK, MEMBERS_BLOCK, ANCHORS_BLOCK, LITES_BLOCK, FABRICATION_BLOCK, INSTALLATION_BLOCK,
  LINES_STATEMENT, LINE, FLOOR, FLOORS, SLAB_STATEMENT, ROW, FACE, CORNER, JOINT, OPENING,
  VERTICAL, HORIZONTAL, SPLICE, REINFORCE, BRACKET, END_DAM,
  DEAD_LOAD, WIND_LOAD, CLIP, VISION, SPANDREL, LADDER, STICK, UNKNOWN,

  // clause words; each is named as its ClauseWord
  AT, FROM, SPACED, SKIP_WORD, ONLY, BAYS, ROWS, LINES, AS, WITH, PART, SLEEVE, LIKE,
  ISOLATED_BY, BEDDED_ON, SPREAD_BY, BOLTED, GAP, SLAB, EDGE, CLEAR, MASS, OFFSET, THROUGH, MARK,
  START, BY_OTHERS, OPERABLE, MIRRORED,
  /** No word: stands before the point loads of a bracket. */
  LOADS,

  // words that join
  BY, ON, OTHERS, ALL, EXCEPT, EVERY, ABOVE, BELOW, RIGHT_OF, LEFT_OF, OF, TO,
  FLOOR_WORD, SPLICES, EQUAL, IN, TIMES, ARM, DIRECTION, GLASS,
  NOTE, VERIFY, HOLD,

  // values
  UNIT, COUNT, REFERENCE, SIGN,

  /** A comma between two names of one selection; every other comma is COMMA. */
  ITEM_COMMA,
  /** Stands for something already reported. */
  FAULT
}

NL: '\r\n' | '\n' | '\r';
SPACE: [ \t\f\u000B\uFEFF\p{Zs}]+ -> skip;

LINE_COMMENT: '//' ~[\r\n]*;
BLOCK_COMMENT: '/*' {commentEnds()}? COMMENT_BODY '*'+ '/';
/** A comment whose end stands nowhere; it ends with its line or before a brace, and costs no more. */
OPEN_COMMENT: '/*' {!commentEnds()}? ~[{}\r\n]*;

STRING: '"' ~["\r\n]* '"' | [\u201C\u201D] ~["\u201C\u201D\r\n]* ["\u201D];
/** A text without its last quote; it ends before a brace, so that the block is not lost with it. */
OPEN_STRING: '"' ~["{}\r\n]* | [\u201C\u201D] ~["\u201C\u201D{}\r\n]*;

LENGTH: FEET | (FEET JOINT)? INCHES INCH_MARK;
/** Feet and inches, or inches and a fraction, that lack their inch mark. */
UNMARKED_LENGTH: FEET '-' INCHES | DIGITS BLANK+ FRACTION;
FEET_TWICE: FEET '-' INCHES FOOT_MARK;
/** Inches in place of feet and inches, or a minus without spaces: 5-6". */
MARKED_DASHED: DIGITS '-' INCHES INCH_MARK;
/** Digits and dashes: a grid line's name, or a length or minus gone wrong. */
DASHED: DIGITS ('-' DIGITS)+ | DIGITS '-' FRACTION;
NUMBER: DECIMAL ([eE] [+-]? DIGITS)?;
/** A number with its unit, or the name of a grid line. */
DIGIT_WORD: DECIMAL '-'? LETTER WORD* ([.-] WORD+)* ('/' LETTER WORD*)?;

NAME: NAME_TEXT;
/** A division, or a unit such as lb/ft. */
SLASHED: NAME_TEXT '/' NAME_TEXT;
DOTTED: LETTER+ '\u00B7' LETTER+;
/** A name and an inch mark: spaces round a minus are missing, or the mark is astray. */
MARKED_NAME: LETTER (WORD | [.-] WORD)* DIGIT INCH_MARK | LETTER DIGIT INCH_MARK | NAME_TEXT '-' (FEET '-')? INCHES INCH_MARK | NAME_TEXT '-' FEET;
UNIT_MARK: '\u00B0' [FC]? | '%';
PER_DEGREE: '/' '\u00B0'? [FCK];

RANGE: '..';
COMMA: ',';
EACH: '@';
ASSIGN: '=';
PLUS: '+';
MINUS: '-' | '\u2212';
STAR: '*';
DIVIDE: '/';
LPAREN: '(';
RPAREN: ')';
LBRACE: '{';
RBRACE: '}';

STRAY: .;

fragment COMMENT_BODY: (~'*' | '*'+ ~[*/])*;
fragment DIGIT: [0-9];
fragment DIGITS: DIGIT+;
fragment DECIMAL: DIGITS ('.' DIGITS)? | '.' DIGITS;
fragment BLANK: [ \t\u00A0];
fragment FRACTION: DIGITS '/' DIGITS;
fragment FOOT_MARK: ['\u2032\u2019];
fragment INCH_MARK: ["\u2033\u201D];
fragment FEET: DECIMAL FOOT_MARK;
fragment JOINT: '-' | BLANK*;
fragment INCHES: DECIMAL | (DIGITS (BLANK+ | '-'))? FRACTION;
/** U+00AA stands for every letter beyond ASCII: see TableLexer. */
fragment LETTER: [A-Za-z_\u00AA];
fragment WORD: LETTER | DIGIT;
fragment NAME_TEXT: LETTER (WORD | [.-] WORD)*;
