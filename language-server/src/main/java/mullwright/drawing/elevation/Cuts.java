package mullwright.drawing.elevation;

import java.util.ArrayList;
import java.util.List;

/** Divides a wall into parts that fit, as few and as equal as can be. */
final class Cuts {
  private Cuts() {}

  /**
   * Where to cut.
   *
   * @param start where the wall begins, {@code end} where it ends
   * @param places where it may be cut, ascending, between the two
   * @param most the most a part may measure; a part between two places that measures more stands by
   *     itself
   * @return the chosen places, ascending
   */
  static List<Double> of(double start, double end, List<Double> places, double most) {
    List<Double> few = greedy(start, end, places, most);
    double low = (end - start) / (few.size() + 1);
    double high = most;
    // the least size that needs no more parts makes them as equal as can be
    for (int i = 0; i < 40; i++) {
      double middle = (low + high) / 2;
      if (greedy(start, end, places, middle).size() > few.size()) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return greedy(start, end, places, high);
  }

  private static List<Double> greedy(double start, double end, List<Double> places, double most) {
    List<Double> cuts = new ArrayList<>();
    double from = start;
    double last = start;
    for (double place : places) {
      if (place <= start || place >= end) {
        continue;
      }
      if (place - from > most && last > from) {
        cuts.add(last);
        from = last;
      }
      last = place;
    }
    if (end - from > most && last > from) {
      cuts.add(last);
    }
    return cuts;
  }
}
