package mullwright.quantity;

import java.util.function.IntPredicate;

/**
 * Searches rows of things in ascending order by halving: of a tower's thousands the one at a height
 * is found in a dozen looks.
 */
public final class Ascending {
  private Ascending() {}

  /**
   * How many things something holds for, of a row in which it holds for the first of them and for
   * none after.
   *
   * @param count of the whole row
   * @param holds asked by place; the order is not checked
   * @return from 0 to {@code count}: also the place of the first for which it does not hold
   */
  public static int leading(int count, IntPredicate holds) {
    return leading(0, count, holds);
  }

  /**
   * The first place of a part of a row for which something does not hold, {@code end} if it holds
   * for all.
   *
   * @param start of the part, {@code end} the place after its last
   */
  public static int leading(int start, int end, IntPredicate holds) {
    int low = start;
    int high = end;
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (holds.test(middle)) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
