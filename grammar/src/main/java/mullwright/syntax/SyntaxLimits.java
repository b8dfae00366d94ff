package mullwright.syntax;

/**
 * The limits of what is read, by name; passing one is reported as {@link SyntaxProblem.TooMuch} and
 * never more than that.
 *
 * <p>All are far beyond any wall that was ever drawn: they keep a broken or hostile file from
 * costing more than a moment.
 */
public final class SyntaxLimits {
  /** Blocks within blocks, and parentheses within parentheses. */
  public static final int NESTING = 64;

  /** Operators in one expression. */
  public static final int OPERATORS = 1_000;

  /** Problems told of one top-level block. */
  public static final int PROBLEMS_PER_SEGMENT = 100;

  /** Problems told of one file. */
  public static final int PROBLEMS_PER_FILE = 500;

  /** Words, values, marks and comments of one top-level block. */
  public static final int TOKENS_PER_SEGMENT = 200_000;

  /** UTF-16 code units of one file: some 90,000 lines. */
  public static final int FILE_LENGTH = 4 * 1024 * 1024;

  private SyntaxLimits() {}
}
