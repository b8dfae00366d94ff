package mullwright.model;

import java.util.Arrays;
import java.util.BitSet;

/**
 * What a selection chose, by index.
 *
 * @param indices in the order the text names them, each once
 * @param outright those named by a name of their own, not by a pattern
 */
record Chosen(int[] indices, BitSet outright) {
  static Chosen none() {
    return new Chosen(new int[0], new BitSet());
  }

  boolean isEmpty() {
    return indices.length == 0;
  }

  BitSet set() {
    BitSet set = new BitSet();
    for (int index : indices) {
      set.set(index);
    }
    return set;
  }

  /** Grows a list of indices in which each stands once. */
  static final class Builder {
    private final BitSet seen = new BitSet();
    private int[] indices = new int[16];
    private int size;

    void add(int index) {
      if (!seen.get(index)) {
        seen.set(index);
        if (size == indices.length) {
          indices = Arrays.copyOf(indices, 2 * size);
        }
        indices[size++] = index;
      }
    }

    /** Each index from one to the other, whichever is the greater. */
    void addAll(int from, int to) {
      int step = from <= to ? 1 : -1;
      for (int index = from; index != to + step; index += step) {
        add(index);
      }
    }

    /** The list with only each n-th kept, counted from the first, and without the excepted. */
    Chosen build(int every, BitSet except, BitSet outright) {
      int[] kept = new int[size];
      int count = 0;
      for (int i = 0; i < size; i += every) {
        if (!except.get(indices[i])) {
          kept[count++] = indices[i];
        }
      }
      return new Chosen(Arrays.copyOf(kept, count), outright);
    }
  }
}
