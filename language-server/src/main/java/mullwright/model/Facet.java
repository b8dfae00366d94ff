package mullwright.model;

import mullwright.quantity.Length;

/**
 * One thing a statement can set, by clause: what exceptions override and inherit piece by piece.
 */
final class Facet<T> {
  static final Facet<String> PROFILE = new Facet<>("as");
  static final Facet<String> PART = new Facet<>("part");
  static final Facet<String> WITH = new Facet<>("with");
  static final Facet<String> SLEEVE = new Facet<>("sleeve");
  static final Facet<String> ISOLATION = new Facet<>("isolated by");
  static final Facet<String> BEDDING = new Facet<>("bedded on");
  static final Facet<String> SPREAD = new Facet<>("spread by");
  static final Facet<Length> GAP = new Facet<>("gap");
  static final Facet<Length> OFFSET = new Facet<>("offset");
  static final Facet<Length> SLAB = new Facet<>("slab");
  static final Facet<Length> EDGE = new Facet<>("edge");
  static final Facet<Bolts> BOLTED = new Facet<>("bolted");
  static final Facet<Offset> AT = new Facet<>("at");
  static final Facet<Extent> FROM = new Facet<>("from");
  static final Facet<RowPlace> ROW_PLACE = new Facet<>("at");
  static final Facet<String> GLASS = new Facet<>("glass");
  static final Facet<Boolean> OPERABLE = new Facet<>("operable");
  static final Facet<String> MARK = new Facet<>("mark");
  static final Facet<BracketLoads> LOADS = new Facet<>("loads");

  private final String name;

  private Facet(String name) {
    this.name = name;
  }

  String name() {
    return name;
  }

  /** How many of which fastener. */
  record Bolts(int count, String fastener) {
    // here and below: a record's own way is made at run time, which every start would pay for
    @Override
    public boolean equals(Object other) {
      return other instanceof Bolts same && count == same.count && fastener.equals(same.fastener);
    }

    @Override
    public int hashCode() {
      return fastener.hashCode() * 31 + count;
    }
  }

  /** Height above what is named, and whether the text gives it. */
  record Offset(Length above, boolean stated) {
    @Override
    public boolean equals(Object other) {
      return other instanceof Offset same && stated == same.stated && above.equals(same.above);
    }

    @Override
    public int hashCode() {
      return above.hashCode();
    }
  }

  /** Reach in height, as elevations. */
  record Extent(Length from, Length to) {
    boolean overlaps(Extent other) {
      return from.isShorterThan(other.to) && other.from.isShorterThan(to);
    }
  }

  /** Where a row lies, and whether that is its outer edge. */
  record RowPlace(Slope at, boolean edge) {
    @Override
    public boolean equals(Object other) {
      return other instanceof RowPlace same
          && edge == same.edge
          && at.left().equals(same.at.left())
          && at.right().equals(same.at.right());
    }

    @Override
    public int hashCode() {
      return at.left().hashCode() * 31 + at.right().hashCode();
    }
  }
}
