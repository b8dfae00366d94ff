package mullwright.takeoff.nesting;

import java.util.Arrays;

/**
 * What is cut from one bar: pairs of width index and count, by rising index, and the stock.
 *
 * @param stock index in the {@link CutModel}
 * @param part width indices, rising
 * @param count pieces of each, at least 1
 */
record Pattern(int stock, int[] part, int[] count) {

  /** A pattern from a count for every width. */
  static Pattern of(int stock, int[] counts) {
    int n = 0;
    for (int c : counts) {
      n += c > 0 ? 1 : 0;
    }
    int[] part = new int[n];
    int[] count = new int[n];
    int at = 0;
    for (int i = 0; i < counts.length; i++) {
      if (counts[i] > 0) {
        part[at] = i;
        count[at++] = counts[i];
      }
    }
    return new Pattern(stock, part, count);
  }

  /** True if no more is cut than {@code wanted}. */
  boolean within(int[] wanted) {
    for (int k = 0; k < part.length; k++) {
      if (count[k] > wanted[part[k]]) {
        return false;
      }
    }
    return true;
  }

  /** How often this pattern can be cut before one count exceeds what is {@code wanted}. */
  int times(int[] wanted) {
    int most = Integer.MAX_VALUE;
    for (int k = 0; k < part.length; k++) {
      most = Math.min(most, wanted[part[k]] / count[k]);
    }
    return part.length == 0 ? 0 : most;
  }

  /** Length of bar used, kerfs included. */
  long filled(CutModel model) {
    long sum = 0;
    for (int k = 0; k < part.length; k++) {
      sum += model.width[part[k]] * count[k];
    }
    return sum;
  }

  /** True if the pattern fits its bar by length and by number of pieces. */
  boolean fits(CutModel model) {
    int pieces = 0;
    for (int c : count) {
      pieces += c;
    }
    return filled(model) <= model.capacity[stock] && pieces <= model.pieces;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Pattern p
        && stock == p.stock
        && Arrays.equals(part, p.part)
        && Arrays.equals(count, p.count);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * stock + Arrays.hashCode(part)) + Arrays.hashCode(count);
  }
}
