/**
 * The wall language, from a segment's tokens to its statements.
 *
 * Every decision is made on one token (a test holds it): the token step has given each word the type
 * its place asks for, dropped the line ends that do not end a line, and put one before each closing
 * brace and the end. One rule a statement, one labelled alternative a clause; the tree builder has a
 * method of the same name for each.
 */
parser grammar WallParser;

options { tokenVocab = WallLexer; }

segment: statement* EOF;

block: LBRACE statement* RBRACE;

statement:
    ( use | let | units
    | project | catalog | wall | criteria | part | property
    | grid | members | anchors | lites | fabrication | installation
    | lines | line | floor | floors | slab | row | face | corner | joint | opening
    | vertical | horizontal | splice | reinforce | bracket | endDam
    | deadLoad | windLoad | clip
    | vision | spandrel
    | ladder | stick
    | unknown
    ) NL
    ;

// ---- file, project, catalog --------------------------------------------------------------------

use: USE text remark*;
let: LET name ASSIGN expression remark*;
units: UNITS name remark*;

project: PROJECT_BLOCK text heading block remark*;
catalog: CATALOG_BLOCK text? heading block remark*;
wall: WALL_BLOCK name heading block remark*;
criteria: CRITERIA_BLOCK heading block remark*;
fabrication: FABRICATION_BLOCK heading block remark*;

/** The keyword is the kind of part, open to the catalog: profile, anchor, glass, gasket … */
part: CATALOG_PART name remark* (block remark*)?;

/** A word and phrases; what they mean is told by a table of the model. */
property: PROPERTY (phrase (COMMA phrase)*)? remark* (block remark*)?;

phrase: phrasePart+;

phrasePart
    : expression # measured
    | NAME       # plain
    | RANGE      # plainRange
    | STRING     # quoted
    ;

// ---- wall --------------------------------------------------------------------------------------

grid: GRID_BLOCK heading block remark*;
members: MEMBERS_BLOCK heading block remark*;
anchors: ANCHORS_BLOCK heading block remark*;
lites: LITES_BLOCK heading block remark*;
installation: INSTALLATION_BLOCK heading block remark*;

// grid
lines: LINES_STATEMENT selection tail;
line: LINE name tail;
floor: FLOOR name tail;
floors: FLOORS selection tail;
slab: SLAB_STATEMENT expression selection tail;
row: ROW name tail;
face: FACE name tail;
corner: CORNER name expression tail;
joint: JOINT selection tail;
opening: OPENING kind=name name tail;

// members
vertical: VERTICAL selection tail;
horizontal: HORIZONTAL selection tail;
splice: SPLICE selection tail;
reinforce: REINFORCE selection tail;
bracket: BRACKET selection tail;
endDam: END_DAM selection tail;

// anchors
deadLoad: DEAD_LOAD selection tail;
windLoad: WIND_LOAD selection tail;
clip: CLIP selection tail;

// lites
vision: VISION name selection? tail;
spandrel: SPANDREL name selection? tail;

// installation
ladder: LADDER selection tail;
stick: STICK selection tail;

/** A first word the block does not know; already reported, skipped with all that hangs on it. */
unknown: UNKNOWN junk* (block junk*)?;

junk: ~(NL | LBRACE | RBRACE);

// ---- what follows the arguments ----------------------------------------------------------------

/** Clauses in any order, remarks; clauses may also stand one a line in braces. */
tail: clause* remark* (clauseLines remark*)?;

/** The same before a block of statements. */
heading: clause* remark*;

clauseLines: LBRACE clauseLine* RBRACE;

clauseLine: (clause+ remark* | remark+) NL;

clause
    : AT place (COMMA place)* (TO to=place)?                      # at
    | FROM from=place TO to=place                                 # extent
    | SPACED step (COMMA step)*                                   # spaced
    | (SKIP_WORD | ONLY | BAYS | ROWS | LINES | THROUGH) selection # selecting
    | (AS | WITH | PART | SLEEVE | LIKE | START) name             # named
    | (ISOLATED_BY | SPREAD_BY) BY name                           # namedBy
    | BEDDED_ON ON name                                           # namedOn
    | BOLTED COUNT TIMES name                                     # counted
    | (GAP | SLAB | CLEAR | MASS | OFFSET) expression direction?  # valued
    | EDGE (expression direction?)?                               # edge
    | MARK STRING                                                 # mark
    | BY_OTHERS OTHERS                                            # byOthers
    | (OPERABLE | MIRRORED)                                       # flag
    | LOADS load (COMMA load)*                                    # loads
    ;

step
    : COUNT spread expression   # repeated
    | expression                # single
    ;

spread: EACH | EQUAL IN;

load: force=expression direction (ARM arm=expression armDirection=direction)?;

direction: DIRECTION GLASS?;

remark: (NOTE | VERIFY | HOLD) STRING;

// ---- names, places, values ---------------------------------------------------------------------

name: NAME | STRING;

text: STRING;

selection: (ALL | item (ITEM_COMMA item)*) (EVERY COUNT)? (EXCEPT item (ITEM_COMMA item)*)?;

item: first=name (RANGE last=name)?;

place
    : expression (bearing selection)?   # offset
    | selection                         # atNames
    | FLOOR_WORD BELOW SPLICES          # floorBelowSplices
    ;

bearing: ABOVE | BELOW | (RIGHT_OF | LEFT_OF) OF;

expression: term ((PLUS | MINUS) term)*;

term: factor ((STAR | DIVIDE) factor)*;

factor: SIGN? primary;

primary
    : NUMBER UNIT?              # number
    | LENGTH                    # length
    | REFERENCE                 # reference
    | LPAREN expression RPAREN  # group
    ;
