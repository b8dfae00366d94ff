package mullwright.model;

import java.util.ArrayList;
import java.util.List;
import mullwright.quantity.Ascending;

/** How high the openings of one bay reach: which of them is at a height is found by halving. */
final class OpeningTops {
  /** Lower edges [ticks], ascending. */
  private final long[] bottoms;

  /** The highest upper edge [ticks] of the opening that begins there and of those before it. */
  private final long[] highest;

  OpeningTops(List<Grid.Opening> openings) {
    List<Grid.Opening> fromBelow = new ArrayList<>(openings);
    fromBelow.sort((one, other) -> one.bottom().elevation().compareTo(other.bottom().elevation()));
    bottoms = new long[fromBelow.size()];
    highest = new long[bottoms.length];
    long most = Long.MIN_VALUE;
    for (int i = 0; i < bottoms.length; i++) {
      most = Math.max(most, fromBelow.get(i).top().elevation().ticks());
      bottoms[i] = fromBelow.get(i).bottom().elevation().ticks();
      highest[i] = most;
    }
  }

  boolean isEmpty() {
    return bottoms.length == 0;
  }

  /** The highest upper edge [ticks] of those that begin under a height; the least long if none. */
  long ofThoseUnder(long height) {
    int under = Ascending.leading(bottoms.length, i -> bottoms[i] < height);
    return under == 0 ? Long.MIN_VALUE : highest[under - 1];
  }
}
