package mullwright.model;

import mullwright.quantity.Length;

/**
 * One thing a statement can set, by clause: what exceptions override and inherit piece by piece.
 *
 * @param name the clause as written, for problems
 */
record Facet<T>(String name, Class<T> type) {
  static final Facet<String> PROFILE = new Facet<>("as", String.class);
  static final Facet<String> PART = new Facet<>("part", String.class);
  static final Facet<String> WITH = new Facet<>("with", String.class);
  static final Facet<String> SLEEVE = new Facet<>("sleeve", String.class);
  static final Facet<String> ISOLATION = new Facet<>("isolated by", String.class);
  static final Facet<String> BEDDING = new Facet<>("bedded on", String.class);
  static final Facet<String> SPREAD = new Facet<>("spread by", String.class);
  static final Facet<Length> GAP = new Facet<>("gap", Length.class);
  static final Facet<Length> OFFSET = new Facet<>("offset", Length.class);
  static final Facet<Length> SLAB = new Facet<>("slab", Length.class);
  static final Facet<Length> EDGE = new Facet<>("edge", Length.class);

  /** How many of which fastener. */
  record Bolts(int count, String fastener) {}

  static final Facet<Bolts> BOLTED = new Facet<>("bolted", Bolts.class);

  /** Height above what is named, and whether the text gives it. */
  record Offset(Length above, boolean stated) {}

  static final Facet<Offset> AT = new Facet<>("at", Offset.class);

  /** Reach in height, as elevations. */
  record Extent(Length from, Length to) {
    boolean overlaps(Extent other) {
      return from.isShorterThan(other.to) && other.from.isShorterThan(to);
    }
  }

  static final Facet<Extent> FROM = new Facet<>("from", Extent.class);

  /** Where a row lies, and whether that is its outer edge. */
  record RowPlace(Slope at, boolean edge) {}

  static final Facet<RowPlace> ROW_PLACE = new Facet<>("at", RowPlace.class);

  static final Facet<String> GLASS = new Facet<>("glass", String.class);
  static final Facet<Boolean> OPERABLE = new Facet<>("operable", Boolean.class);
  static final Facet<String> MARK = new Facet<>("mark", String.class);
  static final Facet<BracketLoads> LOADS = new Facet<>("loads", BracketLoads.class);
}
