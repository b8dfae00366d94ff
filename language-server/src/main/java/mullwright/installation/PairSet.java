package mullwright.installation;

/** A set of pairs of step numbers, in one flat table: a tower has thousands at every edit. */
final class PairSet {
  private static final int FIRST_SIZE = 1024;

  /** Spreads neighbouring numbers over the table: 2^64 over the golden ratio. */
  private static final long SPREAD = 0x9E3779B97F4A7C15L;

  /** Pairs as one number, counted from 1 so that 0 is an empty place. */
  private long[] table = new long[FIRST_SIZE];

  private int count;

  /**
   * Takes a pair of numbers that are not negative in.
   *
   * @return true if it was not there
   */
  boolean add(int one, int other) {
    long pair = ((long) one << 32 | other) + 1;
    int place = place(pair);
    if (table[place] == pair) {
      return false;
    }
    table[place] = pair;
    count++;
    if (2 * count > table.length) {
      grow();
    }
    return true;
  }

  private int place(long pair) {
    int last = table.length - 1;
    int place = (int) (pair * SPREAD >>> 32) & last;
    while (table[place] != 0 && table[place] != pair) {
      place = place + 1 & last;
    }
    return place;
  }

  private void grow() {
    long[] old = table;
    table = new long[2 * old.length];
    for (long pair : old) {
      if (pair != 0) {
        table[place(pair)] = pair;
      }
    }
  }
}
