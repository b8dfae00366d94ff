package mullwright.analysis.beam;

import java.util.Arrays;

/** Collects places along a run in order, taking those that coincide for one. */
final class SortedPlaces {
  private final double coincident;
  private double[] places;
  private int size;

  SortedPlaces(int capacity, double coincident) {
    this.places = new double[capacity];
    this.coincident = coincident;
  }

  /** Adds a place unless one that coincides with it is there already. */
  void add(double place) {
    int at = size;
    // Most callers come in order, so look from the end.
    while (at > 0 && places[at - 1] > place) {
      at--;
    }
    if (at > 0 && place - places[at - 1] <= coincident
        || at < size && places[at] - place <= coincident) {
      return;
    }
    if (size == places.length) {
      places = Arrays.copyOf(places, 2 * size + 1);
    }
    System.arraycopy(places, at, places, at + 1, size - at);
    places[at] = place;
    size++;
  }

  double[] toArray() {
    return Arrays.copyOf(places, size);
  }

  /** Index of the place nearest to {@code place} in the first {@code size} of sorted places. */
  static int nearest(double[] sorted, int size, double place) {
    int found = Arrays.binarySearch(sorted, 0, size, place);
    if (found >= 0) {
      return found;
    }
    int after = -found - 1;
    if (after == 0) {
      return 0;
    }
    if (after == size) {
      return size - 1;
    }
    return place - sorted[after - 1] <= sorted[after] - place ? after - 1 : after;
  }
}
