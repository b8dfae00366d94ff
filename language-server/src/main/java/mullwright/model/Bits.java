package mullwright.model;

import java.util.BitSet;

/** Sets of indices taken over stretch by stretch, not one by one. */
final class Bits {
  private Bits() {}

  /**
   * Sets what is set in a part of a set, moved up, in another or in the rest of the same.
   *
   * @param start of the part, {@code end} the place after its last
   * @param by how far it is moved
   */
  static void moved(BitSet from, int start, int end, int by, BitSet to) {
    int at = from.nextSetBit(start);
    while (at >= 0 && at < end) {
      int after = Math.min(end, from.nextClearBit(at));
      to.set(at + by, after + by);
      at = from.nextSetBit(after);
    }
  }
}
