package mullwright.model;

import java.util.BitSet;
import java.util.Optional;
import mullwright.syntax.Clause;
import mullwright.syntax.ClauseWord;

/**
 * The finished grid as statements name it: lines, bays, rows and heights.
 *
 * @param lines names of the lines, in the order of {@link Grid#lines}
 * @param rows names of the rows, in the order of {@link Grid#rows}
 * @param order the rows bay by bay
 * @param heights floors and rows as places
 */
record GridNames(
    Grid grid, NameIndex lines, Bays bays, NameIndex rows, Rows order, Heights heights) {
  Grid.Row row(int row) {
    return grid.rows().get(row);
  }

  Grid.Floor floor(int floor) {
    return grid.floors().get(floor);
  }

  String lineName(int line) {
    return grid.lines().get(line).name();
  }

  /** Two heights, the lower first. */
  record Extent(Placed from, Placed to) {
    Facet.Extent elevations() {
      return new Facet.Extent(from.at().left(), to.at().left());
    }
  }

  /** The bays beside those lines. */
  BitSet beside(BitSet lines) {
    BitSet beside = new BitSet();
    for (int line = lines.nextSetBit(0); line >= 0; line = lines.nextSetBit(line + 1)) {
      for (int bay : new int[] {bays.leftOf(line), bays.rightOf(line)}) {
        if (bay >= 0) {
          beside.set(bay);
        }
      }
    }
    return beside;
  }

  /**
   * The statement's {@code from … to …}; what does not rise is reported.
   *
   * @param beside the bays that tell which stretch of a stepped row is meant
   */
  Optional<Extent> extent(Said said, BitSet beside, Collector collector) {
    Optional<Clause.Extent> clause = said.clause(ClauseWord.FROM, Clause.Extent.class);
    if (clause.isEmpty()) {
      return Optional.empty();
    }
    PlaceReader places = new PlaceReader(said, heights, collector);
    Optional<Placed> from = places.one(clause.get().from(), order, beside, true);
    Optional<Placed> to = places.one(clause.get().to(), order, beside, false);
    if (from.isEmpty() || to.isEmpty()) {
      return Optional.empty();
    }
    if (!from.get().at().left().isShorterThan(to.get().at().left())) {
      String lower = said.spot().text(clause.get().from().range());
      String upper = said.spot().text(clause.get().to().range());
      collector.problem(
          new ModelProblem.OutOfOrder(
              "place", upper, lower, from.get().origin(), to.get().origin()));
      return Optional.empty();
    }
    return Optional.of(new Extent(from.get(), to.get()));
  }
}
