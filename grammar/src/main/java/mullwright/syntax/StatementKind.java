package mullwright.syntax;

import static mullwright.syntax.BlockKind.*;
import static mullwright.syntax.ClauseWord.*;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * Every statement of the language: the blocks it may stand in, the clauses it takes, the block it
 * opens and one sentence on what it says.
 *
 * <p>This table is what the token step, the formatter, completion and hovers read; the shape of the
 * arguments after the keyword is the grammar's.
 */
public enum StatementKind {
  USE("brings in another file by relative path", EnumSet.of(FILE), null),
  LET("gives a name to a value", EnumSet.of(FILE, PROJECT, CATALOG, BlockKind.WALL, GRID), null),
  UNITS(
      "what a bare number is: inches, feet, millimetres or metres",
      EnumSet.of(FILE, PROJECT, CATALOG, BlockKind.WALL),
      null),
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

  LINES_STATEMENT("vertical grid lines, by name", EnumSet.of(GRID), null, SPACED, SKIP, AT, EDGE),
  LINE("one vertical grid line", EnumSet.of(GRID), null, AT, EDGE),
  FLOOR("a floor: top of slab", EnumSet.of(GRID), null, AT, ClauseWord.SLAB, EDGE),
  FLOORS("floors, by spacing", EnumSet.of(GRID), null, SPACED, AT, ClauseWord.SLAB, EDGE),
  SLAB_STATEMENT("the slab depth of named floors", EnumSet.of(GRID), null, EDGE),
  ROW("a row of horizontals", EnumSet.of(GRID), null, AT, ONLY, EDGE),
  FACE(
      "a face of the wall: its lines",
      EnumSet.of(GRID),
      null,
      ClauseWord.LINES,
      SPACED,
      SKIP,
      AT,
      EDGE),
  CORNER("a turn of the wall at a line", EnumSet.of(GRID), null),
  JOINT("two jambs side by side: nothing crosses", EnumSet.of(GRID), null),
  OPENING(
      "a door, void, louvre or vent in the wall",
      EnumSet.of(GRID),
      null,
      BAYS,
      ROWS,
      FROM,
      BY_OTHERS,
      CLEAR,
      MASS,
      ClauseWord.MARK),

  VERTICAL("what stands on lines", EnumSet.of(MEMBERS), null, AS, FROM),
  HORIZONTAL("what lies on rows", EnumSet.of(MEMBERS), null, AS, BAYS, THROUGH),
  SPLICE("where a vertical is cut and may move", EnumSet.of(MEMBERS), null, AT, GAP, SLEEVE),
  REINFORCE("steel inside a vertical", EnumSet.of(MEMBERS), null, WITH, FROM, ISOLATED_BY),
  BRACKET("a bracket with its point loads", EnumSet.of(MEMBERS), null, AT, LOADS, BOLTED, PART),
  END_DAM(
      "a dam beside a line, at the end of the horizontal of a row",
      EnumSet.of(MEMBERS),
      null,
      AT,
      PART),

  DEAD_LOAD(
      "an anchor that carries weight and wind",
      EnumSet.of(ANCHORS),
      null,
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
      null,
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
      null,
      AT,
      PART,
      BOLTED,
      ISOLATED_BY,
      BEDDED_ON,
      OFFSET),

  VISION("vision glass", EnumSet.of(LITES), null, BAYS, ROWS, OPERABLE, ClauseWord.MARK),
  SPANDREL("spandrel glass", EnumSet.of(LITES), null, BAYS, ROWS, ClauseWord.MARK),

  LADDER("bays set as ladders put together on the bench", EnumSet.of(INSTALLATION), null, START),
  STICK("bays set piece by piece", EnumSet.of(INSTALLATION), null, START),

  /** A first word the block does not know; kept so that the rest of the file still works. */
  UNKNOWN("", EnumSet.allOf(BlockKind.class), null);

  private final String meaning;
  private final Set<BlockKind> standsIn;
  private final BlockKind opens;
  private final Set<ClauseWord> clauses;

  StatementKind(String meaning, Set<BlockKind> standsIn, BlockKind opens, ClauseWord... clauses) {
    this.meaning = meaning;
    this.standsIn = Set.copyOf(standsIn);
    this.opens = opens;
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
