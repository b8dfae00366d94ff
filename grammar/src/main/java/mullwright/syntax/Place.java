package mullwright.syntax;

import java.util.Optional;

/**
 * A place in height or along the wall, as written: {@code [LENGTH above | below] NAMES}, or a bare
 * length from the datum.
 */
public sealed interface Place {
  /** Where it stands in the text. */
  TextRange range();

  /** Which way the offset goes from what is named. */
  enum Direction {
    ABOVE,
    BELOW,
    RIGHT_OF,
    LEFT_OF
  }

  /** A bare length (or {@code let} name or arithmetic) from the datum. */
  record FromDatum(Expression length) implements Place {
    @Override
    public TextRange range() {
      return length.range();
    }
  }

  /**
   * At, above, below, right or left of what is named. A single bare name may turn out to be a
   * {@code let}; only the model can tell.
   *
   * @param offset the length, empty for a place right at what is named
   * @param direction which way, null without an offset
   * @param names floors, rows or lines
   */
  record AtNames(Optional<Expression> offset, Direction direction, Selection names, TextRange range)
      implements Place {}

  /** {@code floor below splices}: the nearest floor under each splice of the line. */
  record FloorBelowSplices(TextRange range) implements Place {}
}
