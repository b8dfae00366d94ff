package mullwright.review;

import java.util.Map;
import java.util.TreeMap;
import mullwright.layout.Cell;
import mullwright.layout.CoverPiece;
import mullwright.layout.HorizontalPiece;
import mullwright.layout.PlacedAnchor;
import mullwright.layout.SpliceJoint;
import mullwright.layout.VerticalPiece;
import mullwright.layout.WallLayout;
import mullwright.model.Given;
import mullwright.model.Members;
import mullwright.model.Part;
import mullwright.model.PartKind;
import mullwright.quantity.Length;
import mullwright.quantity.Rational;

/**
 * What a wall takes of bars, glass and hardware, straight from its pieces.
 *
 * <p>Net of cutting: lengths are sums of cut lengths, areas of exact glass sizes. Hardware is what
 * follows piece by piece from the conventions of measure.
 */
public final class Goods {
  private static final int BLOCKS_A_HORIZONTAL = 2;
  private static final int BLOCKS_A_LITE = 2;

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
   * @param metres length of bars, {@code squareMetres} area of glass; zero for the rest
   */
  public record Amount(long count, Rational metres, Rational squareMetres) {
    static final Amount NONE = new Amount(0, Rational.ZERO, Rational.ZERO);

    Amount plus(long pieces, Rational length, Rational area) {
      return new Amount(count + pieces, metres.plus(length), squareMetres.plus(area));
    }
  }

  private final Map<Item, Amount> amounts = new TreeMap<>();
  private final WallLayout layout;

  private Goods(WallLayout layout) {
    this.layout = layout;
    for (VerticalPiece piece : layout.verticals()) {
      bar("profile", piece.profile().name(), piece.length());
    }
    for (HorizontalPiece piece : layout.horizontals()) {
      bar("profile", piece.profile().name(), piece.length());
      system(PartKind.SHEAR_BLOCK, BLOCKS_A_HORIZONTAL);
    }
    for (CoverPiece cover : layout.covers()) {
      boolean plate = cover.what() == CoverPiece.What.PRESSURE_PLATE;
      bar(plate ? "pressure plate" : "face cap", cover.part(), cover.length());
    }
    layout.cells().forEach(this::glass);
    layout.splices().forEach(this::sleeve);
    layout.anchors().forEach(this::anchor);
    for (Members.Bracket bracket : layout.wall().members().brackets()) {
      count("bracket", "bracket", 1);
      bracket.bolted().ifPresent(b -> count("fastener", b.fastener().value(), b.count()));
    }
  }

  /** What the wall takes, by thing. */
  static Map<Item, Amount> of(WallLayout layout) {
    return new Goods(layout).amounts;
  }

  private void add(Item item, long pieces, Rational length, Rational area) {
    amounts.merge(
        item,
        Amount.NONE.plus(pieces, length, area),
        (one, other) -> one.plus(other.count(), other.metres(), other.squareMetres()));
  }

  private void bar(String kind, String name, Length length) {
    add(new Item(Group.BARS, kind, name), 1, length.metres(), Rational.ZERO);
  }

  private void count(String kind, String name, long pieces) {
    add(new Item(Group.HARDWARE, kind, name), pieces, Rational.ZERO, Rational.ZERO);
  }

  private void system(PartKind kind, long pieces) {
    layout
        .wall()
        .system()
        .map(system -> system.parts().get(kind))
        .map(Given::value)
        .ifPresent(name -> count(kind.spelling(), name, pieces));
  }

  private void glass(Cell cell) {
    if (cell.use().isPresent() && cell.opening().isEmpty()) {
      Rational area = cell.glassWidth().metres().times(cell.glassHeight().metres());
      Item item = new Item(Group.GLASS, "glass", cell.use().get().glass().value());
      add(item, 1, Rational.ZERO, area);
      system(PartKind.SETTING_BLOCK, BLOCKS_A_LITE);
    }
  }

  private void sleeve(SpliceJoint joint) {
    String stated = joint.splice().sleeve().map(Given::value).orElse("");
    Part.Profile profile = layout.verticals().get(joint.below()).profile();
    String name = stated.isEmpty() ? profile.sleeve().map(Given::value).orElse("") : stated;
    if (!name.isEmpty()) {
      count("sleeve", name, 1);
    }
  }

  private void anchor(PlacedAnchor anchor) {
    String kind = anchor.use().kind().spelling();
    count(kind, anchor.use().part().map(Given::value).orElse("of the system"), 1);
    anchor.use().bolted().ifPresent(b -> count("fastener", b.fastener().value(), b.count()));
    anchor.use().spread().ifPresent(plate -> count("spread-plate set", plate.value(), 1));
    anchor.use().isolation().ifPresent(pad -> count("isolation", pad.value(), 1));
    anchor.use().bedding().ifPresent(pad -> count("bedding", pad.value(), 1));
  }
}
