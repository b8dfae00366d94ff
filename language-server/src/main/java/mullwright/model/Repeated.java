package mullwright.model;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.RandomAccess;
import java.util.function.BiPredicate;
import java.util.function.IntConsumer;
import java.util.function.ToLongFunction;

/**
 * What a few statements say of many places: each is kept once, and of each place only its numbers.
 *
 * <p>A list like any other that cannot be changed; its elements are made as they are asked for. A
 * wall of 200 bays and 120 floors has 72,000 lites: to make and compare them all at every edit
 * would take longer than all else.
 */
final class Repeated<T> extends AbstractList<T> implements RandomAccess {
  private final List<T> said;
  private final int[] which;
  private final int[] places;
  private final At<T> at;

  /** Numbers that tell a place: a bay and the rows under and over it, a row and a bay, a line. */
  static final int NUMBERS = 3;

  /** Makes of what is said the thing at a place. */
  interface At<T> {
    T at(T said, int first, int second, int third);
  }

  private Repeated(List<T> said, int[] which, int[] places, At<T> at) {
    this.said = said;
    this.which = which;
    this.places = places;
    this.at = at;
  }

  /**
   * What is said of places that were numbered before.
   *
   * @param which by place what is said of it, less than 0 if nothing is
   * @param places the numbers of each place; neither array is written to afterwards
   */
  static <T> List<T> of(List<T> said, int[] which, int[] places, At<T> at) {
    int told = 0;
    for (int what : which) {
      told += what < 0 ? 0 : 1;
    }
    if (told == which.length) {
      return new Repeated<>(List.copyOf(said), which, places, at);
    }
    Builder<T> some = new Builder<>(told, at);
    said.forEach(some::say);
    for (int i = 0; i < which.length; i++) {
      int place = NUMBERS * i;
      if (which[i] >= 0) {
        some.add(which[i], places[place], places[place + 1], places[place + 2]);
      }
    }
    return some.list();
  }

  /** The list itself if it cannot be changed, else a copy that cannot. */
  static <T> List<T> unchanging(List<T> list) {
    return list instanceof Repeated ? list : List.copyOf(list);
  }

  @Override
  public T get(int index) {
    int place = NUMBERS * index;
    return at.at(said.get(which[index]), places[place], places[place + 1], places[place + 2]);
  }

  @Override
  public int size() {
    return which.length;
  }

  /** Those of which one of the numbers, the first being 0, is in a set. */
  List<T> where(int number, BitSet kept) {
    Builder<T> some = new Builder<>(16, at);
    said.forEach(some::say);
    for (int i = 0; i < which.length; i++) {
      int place = NUMBERS * i;
      if (kept.get(places[place + number])) {
        some.add(which[i], places[place], places[place + 1], places[place + 2]);
      }
    }
    return some.list();
  }

  /** Tells one of the numbers of each, the first being 0. */
  void eachNumber(int number, IntConsumer tell) {
    for (int place = number; place < places.length; place += NUMBERS) {
      tell.accept(places[place]);
    }
  }

  /** True if both speak of the very same places, one after the other. */
  boolean hasPlacesOf(Repeated<T> other) {
    return Arrays.equals(places, other.places);
  }

  /**
   * Tells the index of each element that says something else than that of another list, which has
   * the same places.
   */
  void differences(Repeated<T> other, BiPredicate<T, T> same, IntConsumer tell) {
    int[] equal = new int[said.size()];
    Arrays.fill(equal, -1);
    for (int i = 0; i < which.length; i++) {
      int one = which[i];
      int two = other.which[i];
      if (equal[one] != two) {
        if (same.test(said.get(one), other.said.get(two))) {
          equal[one] = two;
        } else {
          tell.accept(i);
        }
      }
    }
  }

  /** Gathers what is said and where. */
  static final class Builder<T> {
    private final List<T> said = new ArrayList<>();
    private final At<T> at;
    private int[] which;
    private int[] places;
    private int size;

    /**
     * @param expected how many places there will be, about
     */
    Builder(int expected, At<T> at) {
      this.at = at;
      this.which = new int[Math.max(1, expected)];
      this.places = new int[NUMBERS * which.length];
    }

    /** Takes something that is said; its number is for {@link #add}. */
    int say(T what) {
      said.add(what);
      return said.size() - 1;
    }

    /** Adds a place of which that is said. */
    void add(int what, int first, int second, int third) {
      if (size == which.length) {
        which = Arrays.copyOf(which, 2 * size);
        places = Arrays.copyOf(places, NUMBERS * which.length);
      }
      which[size] = what;
      places[NUMBERS * size] = first;
      places[NUMBERS * size + 1] = second;
      places[NUMBERS * size + 2] = third;
      size++;
    }

    /**
     * The list in the order of the first numbers; of things with the same first number, the lower
     * one first.
     *
     * @param firsts how many first numbers there may be
     * @param height of what is said
     */
    List<T> list(int firsts, ToLongFunction<T> height) {
      int[] ends = new int[firsts + 1];
      for (int i = 0; i < size; i++) {
        ends[places[NUMBERS * i] + 1]++;
      }
      for (int i = 0; i < firsts; i++) {
        ends[i + 1] += ends[i];
      }
      int[] next = Arrays.copyOf(ends, firsts);
      int[] order = new int[size];
      for (int i = 0; i < size; i++) {
        order[next[places[NUMBERS * i]]++] = i;
      }
      long[] heights = new long[said.size()];
      for (int i = 0; i < heights.length; i++) {
        heights[i] = height.applyAsLong(said.get(i));
      }
      for (int i = 0; i < firsts; i++) {
        upward(order, ends[i], ends[i + 1], heights);
      }
      Builder<T> sorted = new Builder<>(size, at);
      said.forEach(sorted::say);
      for (int i : order) {
        int place = NUMBERS * i;
        sorted.add(which[i], places[place], places[place + 1], places[place + 2]);
      }
      return sorted.list();
    }

    /** Sorts a stretch of things, which mostly come from below. */
    private void upward(int[] order, int from, int to, long[] heights) {
      boolean upward = true;
      for (int i = from + 1; i < to; i++) {
        upward &= heights[which[order[i - 1]]] <= heights[which[order[i]]];
      }
      if (upward) {
        return;
      }
      List<Integer> stretch = new ArrayList<>(to - from);
      for (int i = from; i < to; i++) {
        stretch.add(order[i]);
      }
      stretch.sort((one, other) -> Long.compare(heights[which[one]], heights[which[other]]));
      for (int i = from; i < to; i++) {
        order[i] = stretch.get(i - from);
      }
    }

    List<T> list() {
      int[] all = size == which.length ? which : Arrays.copyOf(which, size);
      int[] where =
          NUMBERS * size == places.length ? places : Arrays.copyOf(places, NUMBERS * size);
      return new Repeated<>(List.copyOf(said), all, where, at);
    }
  }
}
