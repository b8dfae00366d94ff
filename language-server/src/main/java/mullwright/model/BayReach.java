package mullwright.model;

import java.util.BitSet;
import java.util.Optional;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;
import mullwright.syntax.Selection;

/**
 * Numbers what stands in bays: one key for each bay of each slot (a floor, a row, a place).
 *
 * <p>A wall whose lines could not be read has one nameless bay here, so that its rows still exist.
 */
final class BayReach {
  private final NameIndex lines;
  private final Bays bays;
  private final int count;

  BayReach(NameIndex lines, Bays bays) {
    this.lines = lines;
    this.bays = bays;
    this.count = Math.max(1, bays.count());
  }

  Bays bays() {
    return bays;
  }

  /** The bays a row runs through: {@code only}, or all, less those its place excepts. */
  BitSet of(Said said, NameIndex heights, Collector collector) {
    BitSet reach = new BitSet();
    reach.set(0, count);
    if (bays.count() > 0) {
      SelectionReader reader = new SelectionReader(said, collector);
      Clause.Selecting only = said.clause(ClauseWord.ONLY, Clause.Selecting.class).orElse(null);
      if (only != null) {
        reach = reader.bays(only.selection(), lines, bays).set();
      }
      Optional<Selection> except = except(heights).bays(said);
      if (except.isPresent()) {
        reach.andNot(reader.bays(except.get(), lines, bays).set());
      }
    }
    return reach;
  }

  /** Tells bays from floors where a row's place excepts some. */
  BayExcept except(NameIndex heights) {
    return new BayExcept(heights, lines);
  }

  /** The key of a slot's first bay. */
  int first(int slot) {
    return slot * count;
  }

  /** Adds the keys of those bays of a slot. */
  void each(int slot, BitSet of, BitSet keys) {
    for (int bay = of.nextSetBit(0); bay >= 0; bay = of.nextSetBit(bay + 1)) {
      keys.set(first(slot) + bay);
    }
  }

  int slot(int key) {
    return key / count;
  }

  int bay(int key) {
    return key % count;
  }

  /** Bays beside each other have no joint or corner between. */
  boolean adjoin(int bay, int next) {
    return bays.count() == 0 || bays.get(bay).right() == bays.get(next).left();
  }

  /** {@code bay C-D}, or "" for the nameless one. */
  String name(int bay) {
    return bays.count() == 0 ? "" : bays.name(bay);
  }
}
