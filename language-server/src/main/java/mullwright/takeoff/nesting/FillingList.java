package mullwright.takeoff.nesting;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;

/**
 * Lists all fillings of one bar that are worth a given sum, for {@link SearchTreeCheck}.
 *
 * <p>What the lengths still to come can be worth is read from a table over room in cells; widths
 * are rounded down to cells, so that the table never says less than there can be.
 */
final class FillingList {
  private static final long MOST_CELLS = 6_000_000;

  private final long[] width;
  private final long[] price;
  private final int[] wanted;
  private final int[] cells;
  private final long capacity;
  private final long size;
  private final int most;

  /** By index of length: what that length and those after it are worth at most, by cells. */
  private final long[][] table;

  private final List<int[]> found = new ArrayList<>();

  /**
   * A table for these prices.
   *
   * @param width of each length with its saw cut
   * @param capacity of the longest bar, with one saw cut
   * @param most fillings that are listed at all
   */
  FillingList(long[] width, long[] price, int[] wanted, long capacity, int most) {
    this.width = width;
    this.price = price;
    this.wanted = wanted;
    this.capacity = Math.max(1, capacity);
    this.most = most;
    long step = this.capacity;
    for (long each : width) {
      step = gcd(each, step);
    }
    this.size = Math.min(this.capacity / step, MOST_CELLS / (width.length + 1));
    this.cells = new int[width.length];
    for (int i = 0; i < cells.length; i++) {
      cells[i] = cells(width[i]);
    }
    this.table = new long[width.length + 1][(int) size + 1];
    for (int i = width.length - 1; i >= 0; i--) {
      fill(i);
    }
  }

  private static long gcd(long a, long b) {
    return b == 0 ? a : gcd(b, a % b);
  }

  private int cells(long room) {
    // room and size may be large; the quotient is at most the size
    return (int)
        BigInteger.valueOf(room)
            .multiply(BigInteger.valueOf(size))
            .divide(BigInteger.valueOf(capacity))
            .longValueExact();
  }

  private void fill(int i) {
    long[] row = table[i];
    System.arraycopy(table[i + 1], 0, row, 0, row.length);
    int left = (int) Math.min(wanted[i], cells[i] == 0 ? wanted[i] : size / cells[i]);
    for (int chunk = 1; left > 0 && price[i] > 0; chunk *= 2) {
      int pieces = Math.min(chunk, left);
      left -= pieces;
      long worth = Math.multiplyExact(price[i], (long) pieces);
      int used = pieces * cells[i];
      for (int at = row.length - 1; at >= used; at--) {
        row[at] = Math.max(row[at], Math.addExact(row[at - used], worth));
      }
    }
  }

  /** The fillings of a bar; null if there are too many. */
  List<int[]> of(long room, int piecesPerBar, long need) {
    found.clear();
    extend(0, room, cells(room), piecesPerBar, 0, need, new int[width.length]);
    return found.size() > most ? null : List.copyOf(found);
  }

  private void extend(
      int from, long room, int left, int pieces, long worth, long need, int[] counts) {
    if (found.size() > most || Math.addExact(worth, table[from][left]) < need) {
      return;
    }
    if (from == width.length) {
      found.add(counts.clone());
      return;
    }
    int fit = (int) Math.min(Math.min(wanted[from], pieces), room / width[from]);
    for (int take = 0; take <= fit; take++) {
      counts[from] = take;
      long more = Math.multiplyExact(price[from], (long) take);
      extend(
          from + 1,
          room - take * width[from],
          left - take * cells[from],
          pieces - take,
          Math.addExact(worth, more),
          need,
          counts);
    }
    counts[from] = 0;
  }
}
