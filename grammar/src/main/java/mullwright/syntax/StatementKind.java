package mullwright.syntax;

import static mullwright.syntax.BlockKind.*;
import static mullwright.syntax.ClauseWord.*;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Every statement of the language: the blocks it may stand in, what it is about, the clauses it
 * takes, the block it opens and one sentence on what it says.
 *
 * <p>This table is what the token step, the formatter, completion and hovers read.
 */
public enum StatementKind {
  USE("brings in another file by relative path", EnumSet.of(FILE), Form.OWN),
  LET(
      "gives a name to a value",
      EnumSet.of(FILE, PROJECT, CATALOG, BlockKind.WALL, GRID),
      Form.OWN),
  UNITS(
      "what a bare number is: inches, feet, millimetres or metres",
      EnumSet.of(FILE, PROJECT, CATALOG, BlockKind.WALL),
      Form.OWN),
  PROJECT_BLOCK("the job and what it asks of its walls", EnumSet.of(FILE), PROJECT),
  CATALOG_BLOCK(
      "profiles, anchors, glass and other parts a system is made of", EnumSet.of(FILE), CATALOG),
  WALL_BLOCK("one wall", EnumSet.of(FILE), BlockKind.WALL, LIKE, MIRRORED),
  CRITERIA_BLOCK("wind, heat, movement and limits", EnumSet.of(PROJECT, BlockKind.WALL), CRITERIA),
  /** {@code profile mullion-6 { … }}: the keyword is the kind of part, the argument its name. */
  CATALOG_PART("a part of the catalog", EnumSet.of(CATALOG), CATALOG_ITEM),
  /** A line of criteria, of a catalog part, of fabrication: a word and phrases. */
  PROPERTY(
      "a property",
      EnumSet.of(PROJECT, CRITERIA, CATALOG_ITEM, BlockKind.WALL, FABRICATION),
      CATALOG_ITEM),
  GRID_BLOCK("which lines, floors, rows and openings exist", EnumSet.of(BlockKind.WALL), GRID),
  MEMBERS_BLOCK("what stands on lines and rows", EnumSet.of(BlockKind.WALL), MEMBERS),
  ANCHORS_BLOCK("what holds the wall to the building", EnumSet.of(BlockKind.WALL), ANCHORS),
  LITES_BLOCK("what fills the openings", EnumSet.of(BlockKind.WALL), LITES),
  FABRICATION_BLOCK("how the shop cuts", EnumSet.of(PROJECT, BlockKind.WALL), FABRICATION),
  INSTALLATION_BLOCK("how the wall is put up", EnumSet.of(BlockKind.WALL), INSTALLATION),

  LINES_STATEMENT(
      "vertical grid lines, by name", EnumSet.of(GRID), Form.LINE_NAMES, SPACED, SKIP, AT, EDGE),
  LINE("one vertical grid line", EnumSet.of(GRID), Form.LINE_NAME, AT, EDGE),
  FLOOR("a floor: top of slab", EnumSet.of(GRID), Form.OWN, AT, ClauseWord.SLAB, EDGE),
  FLOORS(
      "floors, by spacing", EnumSet.of(GRID), Form.FLOOR_NAMES, SPACED, AT, ClauseWord.SLAB, EDGE),
  SLAB_STATEMENT("the slab depth of named floors", EnumSet.of(GRID), Form.DEPTH_OF_FLOORS, EDGE),
  ROW("a row of horizontals", EnumSet.of(GRID), Form.OWN, AT, ONLY, EDGE),
  FACE(
      "a face of the wall: its lines",
      EnumSet.of(GRID),
      Form.OWN,
      ClauseWord.LINES,
      SPACED,
      SKIP,
      AT,
      EDGE),
  CORNER("a turn of the wall at a line", EnumSet.of(GRID), Form.LINE_AND_ANGLE),
  JOINT("two jambs side by side: nothing crosses", EnumSet.of(GRID), Form.JOINED_LINES),
  OPENING(
      "a door, void, louvre or vent in the wall",
      EnumSet.of(GRID),
      Form.OWN,
      BAYS,
      ROWS,
      FROM,
      BY_OTHERS,
      CLEAR,
      MASS,
      ClauseWord.MARK),

  VERTICAL("what stands on lines", EnumSet.of(MEMBERS), Form.LINES, AS, FROM),
  HORIZONTAL("what lies on rows", EnumSet.of(MEMBERS), Form.ROWS, AS, BAYS, THROUGH),
  SPLICE("where a vertical is cut and may move", EnumSet.of(MEMBERS), Form.LINES, AT, GAP, SLEEVE),
  REINFORCE("steel inside a vertical", EnumSet.of(MEMBERS), Form.LINES, WITH, FROM, ISOLATED_BY),
  BRACKET(
      "a bracket with its point loads", EnumSet.of(MEMBERS), Form.LINES, AT, LOADS, BOLTED, PART),
  END_DAM(
      "a dam beside a line, at the end of the horizontal of a row",
      EnumSet.of(MEMBERS),
      Form.LINES,
      AT,
      PART),

  DEAD_LOAD(
      "an anchor that carries weight and wind",
      EnumSet.of(ANCHORS),
      Form.LINES,
      AT,
      PART,
      BOLTED,
      ISOLATED_BY,
      BEDDED_ON,
      SPREAD_BY,
      OFFSET),
  WIND_LOAD(
      "an anchor that holds in and out and lets slide",
      EnumSet.of(ANCHORS),
      Form.LINES,
      AT,
      PART,
      BOLTED,
      ISOLATED_BY,
      BEDDED_ON,
      SPREAD_BY,
      OFFSET),
  CLIP(
      "a clip at sill or head: holds in and out, lets slide",
      EnumSet.of(ANCHORS),
      Form.LINES,
      AT,
      PART,
      BOLTED,
      ISOLATED_BY,
      BEDDED_ON,
      OFFSET),

  VISION("vision glass", EnumSet.of(LITES), Form.GLASS, BAYS, ROWS, OPERABLE, ClauseWord.MARK),
  SPANDREL("spandrel glass", EnumSet.of(LITES), Form.GLASS, BAYS, ROWS, ClauseWord.MARK),

  LADDER(
      "bays set as ladders put together on the bench", EnumSet.of(INSTALLATION), Form.BAYS, START),
  STICK("bays set piece by piece", EnumSet.of(INSTALLATION), Form.BAYS, START),

  /** A first word the block does not know; kept so that the rest of the file still works. */
  UNKNOWN("", EnumSet.allOf(BlockKind.class), Form.OWN);

  /** What stands between the first word and the clauses. */
  public enum Form {
    /** Nothing, one name, or what the statement has to itself. */
    OWN(false),
    /** The name of one new line. */
    LINE_NAME(false),
    /** Names of new lines. */
    LINE_NAMES(true),
    /** Names of new floors. */
    FLOOR_NAMES(true),
    /** A depth, then floors. */
    DEPTH_OF_FLOORS(true),
    /** A line, then an angle. */
    LINE_AND_ANGLE(false),
    /** Two lines that stand side by side. */
    JOINED_LINES(true),
    /** Lines, chosen of those of the grid. */
    LINES(true),
    /** Rows, chosen of those of the grid. */
    ROWS(true),
    /** The space from one line to another. */
    BAYS(true),
    /** The name of glass of the catalog, then maybe {@code all}. */
    GLASS(true);

    private final boolean selects;

    Form(boolean selects) {
      this.selects = selects;
    }

    /** True if names are chosen of several, so that ranges and lists may stand. */
    public boolean selects() {
      return selects;
    }
  }

  private final String meaning;
  private final Set<BlockKind> standsIn;
  private final BlockKind opens;
  private final Form form;
  private final Set<ClauseWord> clauses;

  /** A statement that opens a block. */
  StatementKind(String meaning, Set<BlockKind> standsIn, BlockKind opens, ClauseWord... clauses) {
    this(meaning, standsIn, opens, Form.OWN, clauses);
  }

  /** A statement of one line. */
  StatementKind(String meaning, Set<BlockKind> standsIn, Form form, ClauseWord... clauses) {
    this(meaning, standsIn, null, form, clauses);
  }

  StatementKind(
      String meaning, Set<BlockKind> standsIn, BlockKind opens, Form form, ClauseWord... clauses) {
    this.meaning = meaning;
    this.standsIn = Set.copyOf(standsIn);
    this.opens = opens;
    this.form = form;
    this.clauses =
        clauses.length == 0
            ? Set.of()
            : java.util.Collections.unmodifiableSet(EnumSet.of(clauses[0], clauses));
  }

  /** One sentence on what the statement says. */
  public String meaning() {
    return meaning;
  }

  /** The blocks it may stand in. */
  public Set<BlockKind> standsIn() {
    return standsIn;
  }

  /** The block it opens, if it opens one. */
  public Optional<BlockKind> opens() {
    return Optional.ofNullable(opens);
  }

  /** What stands between its first word and its clauses. */
  public Form form() {
    return form;
  }

  /** The clauses it takes, in the order of {@link ClauseWord}. */
  public Set<ClauseWord> clauses() {
    return clauses;
  }

  /**
   * The keyword as written; {@code dead-load} for {@link #DEAD_LOAD}. Parts and properties have
   * keywords of their own and answer an empty word.
   */
  public String spelling() {
    if (this == CATALOG_PART || this == PROPERTY || this == UNKNOWN) {
      return "";
    }
    return name()
        .toLowerCase(Locale.ROOT)
        .replace("_block", "")
        .replace("_statement", "")
        .replace('_', '-');
  }
}
