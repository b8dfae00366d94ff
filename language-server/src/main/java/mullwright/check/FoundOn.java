package mullwright.check;

import java.util.BitSet;

/**
 * On which lines of a wall something was found, by rules that look at one piece at a time; a bay
 * counts as the lines on both its sides.
 *
 * @param anywhere true if something was found, too, that only the whole wall tells
 * @param lines by index
 */
public record FoundOn(boolean anywhere, BitSet lines) {
  public FoundOn {
    lines = (BitSet) lines.clone();
  }

  /** Nothing found. */
  static FoundOn nothing() {
    return new FoundOn(false, new BitSet());
  }

  /** A copy. */
  @Override
  public BitSet lines() {
    return (BitSet) lines.clone();
  }

  /** Both together. */
  FoundOn and(FoundOn other) {
    BitSet both = lines();
    both.or(other.lines);
    return new FoundOn(anywhere || other.anywhere, both);
  }
}
