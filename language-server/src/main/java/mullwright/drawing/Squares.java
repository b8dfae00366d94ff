package mullwright.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * Things kept by where they are, in squares of paper, so that looking one up takes no longer on a
 * large drawing.
 */
public final class Squares<T> {
  private static final double SIZE = 20;

  private record Entry<T>(Box box, T thing) {}

  private final Map<Long, List<Entry<T>>> squares = new HashMap<>();

  /** Puts a thing there. */
  public void put(Box box, T thing) {
    Entry<T> entry = new Entry<>(box, thing);
    for (long x = square(box.left()); x <= square(box.right()); x++) {
      for (long y = square(box.bottom()); y <= square(box.top()); y++) {
        squares.computeIfAbsent(key(x, y), any -> new ArrayList<>(4)).add(entry);
      }
    }
  }

  /** True if one of the boxes whose squares that box touches is such a one. */
  public boolean any(Box box, Predicate<Box> such) {
    for (long x = square(box.left()); x <= square(box.right()); x++) {
      for (long y = square(box.bottom()); y <= square(box.top()); y++) {
        for (Entry<T> entry : squares.getOrDefault(key(x, y), List.of())) {
          if (such.test(entry.box())) {
            return true;
          }
        }
      }
    }
    return false;
  }

  /** The first thing whose box holds that one wholly, or null. */
  public T holding(Box box) {
    for (Entry<T> entry :
        squares.getOrDefault(key(square(box.left()), square(box.bottom())), List.of())) {
      if (entry.box().holds(box)) {
        return entry.thing();
      }
    }
    return null;
  }

  private static long square(double place) {
    return (long) Math.floor(place / SIZE);
  }

  private static long key(long x, long y) {
    return x << 32 ^ y & 0xffffffffL;
  }
}
