package mullwright.layout;

import java.util.Optional;
import mullwright.quantity.Length;
import mullwright.quantity.Rational;

/**
 * The two setting blocks a lite stands on: centred at the quarter points of its bottom edge.
 *
 * <p>Each is 0.1" long for each square foot of glass, at least 4" (flat-glass trade handbook;
 * elastomeric blocks).
 *
 * @param length of each
 * @param first centre of the left one from the left edge of the glass; {@code second} of the right
 */
public record SettingBlockPlaces(Length length, Length first, Length second) {
  /** How many a lite stands on. */
  public static final int COUNT = 2;

  private static final Length LEAST = Length.ofInches(4);
  private static final double SURELY_LEAST = 5700;
  private static final Rational INCHES_PER_SQUARE_INCH = Rational.of(1, 1440);

  /** The blocks of a lite; of an opening by others, and of a cell nothing fills, none. */
  public static Optional<SettingBlockPlaces> of(Cell cell) {
    if (cell.use().isEmpty() || cell.opening().isPresent()) {
      return Optional.empty();
    }
    return Optional.of(of(cell.glassWidth(), cell.glassHeight()));
  }

  /** The blocks of a lite of that exact size. */
  public static SettingBlockPlaces of(Length width, Length height) {
    Length length = LEAST;
    // no need of exact numbers far below the area from which a block is longer
    if (width.toInches() * height.toInches() > SURELY_LEAST) {
      Rational inches = width.inches().times(height.inches()).times(INCHES_PER_SQUARE_INCH);
      length = Length.max(LEAST, Length.nearest(inches.times(Rational.of("0.0254"))));
    }
    Length quarter = width.scaled(1, 4);
    return new SettingBlockPlaces(length, quarter, width.minus(quarter));
  }
}
