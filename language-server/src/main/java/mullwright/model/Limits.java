package mullwright.model;

/**
 * The named limits of reading: what a text may ask for before it is refused with a {@link
 * ModelProblem.TooMany}. Far beyond any wall, short of what would hang an editor.
 */
public final class Limits {
  /** Names that patterns of one wall may make (lines, floors, rows), each kind by itself. */
  public static final int NAMES = 10_000;

  /** Things one wall's statements may name together: lines × places, rows × bays, cells. */
  public static final int THINGS = 200_000;

  /** Things all statements of one block may name, each counted as often as it is named. */
  public static final int REACH = 4_000_000;

  /** Statements that may speak of one and the same thing. */
  public static final int STATEMENTS_OF_ONE_THING = 200;

  /** Files that may be used by one another in a row. */
  public static final int USE_DEPTH = 50;

  /** Files one wall may use in all. */
  public static final int USES = 500;

  /** Walls that may be {@code like} one another in a row. */
  public static final int LIKE_DEPTH = 20;

  /** Parentheses and signs within one another in a value. */
  public static final int EXPRESSION_DEPTH = 200;

  /** Problems that are reported of one file and what it uses. */
  public static final int PROBLEMS = 2_000;

  /** Candidates offered for an unknown name. */
  public static final int CANDIDATES = 40;

  private Limits() {}
}
