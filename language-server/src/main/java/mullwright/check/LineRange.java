package mullwright.check;

/**
 * Neighbouring lines of a wall with the bays between them.
 *
 * @param first by index
 * @param last by index, included
 */
public record LineRange(int first, int last) {
  /** All lines of any wall. */
  public static final LineRange ALL = new LineRange(0, Integer.MAX_VALUE);

  /** True if it holds these lines and all between them. */
  boolean holds(int from, int to) {
    return first <= from && to <= last;
  }

  /** How many bays at most lie between its lines. */
  int bays() {
    return last - first;
  }
}
