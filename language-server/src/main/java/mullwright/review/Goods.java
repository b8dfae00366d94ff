package mullwright.review;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import mullwright.check.WallFacts;
import mullwright.quantity.Length;
import mullwright.quantity.Quantity;
import mullwright.quantity.Rational;
import mullwright.takeoff.Takeoff;
import mullwright.takeoff.TakeoffLine;

/**
 * What a wall takes of bars, glass and hardware: the lines of its takeoff, all faces together.
 *
 * <p>Net of cutting, waste and attic stock: those are what the shop adds to either state alike.
 */
public final class Goods {
  /** What is bought. */
  public enum Group {
    BARS,
    GLASS,
    HARDWARE
  }

  /** One thing to buy. */
  public record Item(Group group, String kind, String name) implements Comparable<Item> {
    @Override
    public int compareTo(Item other) {
      int byGroup = group.compareTo(other.group);
      int byKind = byGroup != 0 ? byGroup : kind.compareTo(other.kind);
      return byKind != 0 ? byKind : name.compareTo(other.name);
    }
  }

  /**
   * How much of it.
   *
   * @param count pieces
   * @param metres of all together, {@code squareMetres} likewise; zero for what is not bought by it
   */
  public record Amount(long count, Rational metres, Rational squareMetres) {
    static final Amount NONE = new Amount(0, Rational.ZERO, Rational.ZERO);

    Amount plus(Amount other) {
      return new Amount(
          count + other.count, metres.plus(other.metres), squareMetres.plus(other.squareMetres));
    }
  }

  private static final Set<String> BARS = Set.of("bar", "reinforcement", "plate", "cap");
  private static final String GLASS = "glass";

  private Goods() {}

  /** What the wall takes, by thing. */
  static Map<Item, Amount> of(WallFacts facts) {
    Map<Item, Amount> amounts = new TreeMap<>();
    for (TakeoffLine line : Takeoff.of(facts.layout(), facts.analysis().holes())) {
      Group group =
          BARS.contains(line.sort())
              ? Group.BARS
              : line.sort().equals(GLASS) ? Group.GLASS : Group.HARDWARE;
      String kind = line.item() + (line.size().isEmpty() ? "" : ", " + line.size());
      Amount more =
          new Amount(
              line.count(),
              line.length().map(Length::metres).orElse(Rational.ZERO),
              line.area().map(Quantity::si).orElse(Rational.ZERO));
      amounts.merge(new Item(group, kind, line.part()), more, Amount::plus);
    }
    return amounts;
  }
}
