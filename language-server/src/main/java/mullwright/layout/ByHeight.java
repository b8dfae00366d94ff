package mullwright.layout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import mullwright.quantity.Length;

/**
 * Things that each take a stretch of height, so that those near a height are found without going
 * through all: a tower has hundreds of storeys of them on a line.
 */
public final class ByHeight<T> {
  private final List<T> things;

  /** Places in {@link #things}, by lower end; equal ones in their order. */
  private final int[] order;

  private final long[] from;
  private final long[] to;
  private final long longest;

  /**
   * Of things and their ends, which are not changed afterwards.
   *
   * @param bottoms lower ends [ticks], {@code tops} upper ends
   */
  public ByHeight(List<T> things, long[] bottoms, long[] tops) {
    this.things = things;
    int count = things.size();
    this.order = new int[count];
    boolean ascending = true;
    long most = 0;
    for (int i = 0; i < count; i++) {
      order[i] = i;
      ascending &= i == 0 || bottoms[i - 1] <= bottoms[i];
      most = Math.max(most, tops[i] - bottoms[i]);
    }
    this.longest = most;
    if (ascending) {
      // as they nearly always come
      this.from = bottoms;
      this.to = tops;
    } else {
      this.from = new long[count];
      this.to = new long[count];
      sort(bottoms, tops);
    }
  }

  private void sort(long[] bottoms, long[] tops) {
    long[][] ends = new long[order.length][];
    for (int i = 0; i < ends.length; i++) {
      ends[i] = new long[] {bottoms[i], tops[i], i};
    }
    Arrays.sort(ends, new Upward());
    for (int i = 0; i < ends.length; i++) {
      from[i] = ends[i][0];
      to[i] = ends[i][1];
      order[i] = (int) ends[i][2];
    }
  }

  /** By lower end. A class, since what is made at run time would cost every start. */
  private static final class Upward implements Comparator<long[]> {
    @Override
    public int compare(long[] one, long[] other) {
      return Long.compare(one[0], other[0]);
    }
  }

  /** Those that reach into a stretch of height or touch it, in the order they were given. */
  public List<T> touching(Length from, Length to) {
    long low = from.ticks();
    int at = Arrays.binarySearch(this.from, low - longest);
    at = at < 0 ? -at - 1 : at;
    while (at > 0 && this.from[at - 1] == low - longest) {
      at--;
    }
    int[] found = new int[4];
    int count = 0;
    for (; at < order.length && this.from[at] <= to.ticks(); at++) {
      if (this.to[at] >= low) {
        found = count == found.length ? Arrays.copyOf(found, 2 * count) : found;
        found[count++] = order[at];
      }
    }
    Arrays.sort(found, 0, count);
    List<T> touching = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      touching.add(things.get(found[i]));
    }
    return touching;
  }
}
