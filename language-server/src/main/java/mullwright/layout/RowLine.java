package mullwright.layout;

import java.math.BigInteger;
import mullwright.model.Grid;
import mullwright.quantity.Length;

/**
 * The straight line a row's centres lie on, level or sloped.
 *
 * @param x where the row's reach begins
 * @param y its height there
 * @param run how far the reach goes to the right; positive for a sloped line
 * @param rise how much higher it ends, zero if level
 * @param slant length of {@code run} measured along the slope, to the nearest tick
 */
record RowLine(Length x, Length y, Length run, Length rise, Length slant) {
  static RowLine level(Length y) {
    return new RowLine(Length.ZERO, y, Length.ZERO, Length.ZERO, Length.ZERO);
  }

  /** The line of a row between the places of the first and the last line it reaches. */
  static RowLine of(Grid.Row row, Length from, Length to) {
    Length left = row.left().elevation();
    Length rise = row.right().elevation().minus(left);
    Length run = to.minus(from);
    if (rise.signum() == 0 || run.signum() <= 0) {
      return level(left);
    }
    return new RowLine(from, left, run, rise, hypotenuse(run, rise));
  }

  boolean isLevel() {
    return rise.signum() == 0;
  }

  /** Height of the line over that place, also beyond its reach. */
  Length yAt(Length at) {
    return isLevel() ? y : y.plus(rise.scaled(at.minus(x).ticks(), run.ticks()));
  }

  /** A horizontal distance measured along the slope. */
  Length along(Length horizontal) {
    return isLevel() ? horizontal : horizontal.scaled(slant.ticks(), run.ticks());
  }

  /** A distance square to the line measured straight up, such as half a face. */
  Length upright(Length square) {
    return along(square);
  }

  /**
   * The longest a piece so wide is, between two upright cuts so far apart: along the slope from the
   * point of one end to the point of the other.
   */
  Length longest(Length apart, Length width) {
    return isLevel() ? apart : along(apart).plus(width.scaled(rise.abs().ticks(), run.ticks()));
  }

  private static Length hypotenuse(Length run, Length rise) {
    BigInteger a = BigInteger.valueOf(run.ticks());
    BigInteger b = BigInteger.valueOf(rise.ticks());
    BigInteger square = a.multiply(a).add(b.multiply(b));
    BigInteger root = square.sqrt();
    // the square root lies above root + 1/2 exactly when square > root² + root
    boolean up = square.subtract(root.multiply(root)).compareTo(root) > 0;
    return new Length((up ? root.add(BigInteger.ONE) : root).longValueExact());
  }
}
