package mullwright.model;

import java.util.BitSet;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import mullwright.syntax.Clause;
import mullwright.syntax.TextRange;

/**
 * What one statement says about the things it names: its reach as a set of keys, and the facets it
 * sets.
 *
 * <p>A statement whose value differs from key to key (several places with offsets of their own)
 * makes several claims that share {@code named}.
 */
final class Claim {
  final Said said;
  final String keyword;

  /** Added to each member of {@code reach}: a claim about one place of many stays small. */
  final int offset;

  /** The keys this claim speaks of, less {@code offset}. */
  final BitSet reach;

  /** The keys the whole statement names: what decides which of two is narrower. */
  final BitSet named;

  private final Map<Facet<?>, Told<?>> facets = new IdentityHashMap<>();

  /** Set by {@link Narrower} as soon as anything it says holds somewhere. */
  boolean holds;

  /** A value with its place, and the text of its clause; made once, asked for by every key. */
  private record Told<T>(Optional<Given<T>> given, String shown) {}

  /** A claim of a whole statement. */
  Claim(Said said, String keyword, BitSet reach) {
    this(said, keyword, 0, reach, reach);
  }

  Claim(Said said, String keyword, int offset, BitSet reach, BitSet named) {
    this.said = said;
    this.keyword = keyword;
    this.offset = offset;
    this.reach = reach;
    this.named = named;
  }

  /** Sets a facet to what stands in that range. */
  <T> void set(Facet<T> facet, T value, TextRange range) {
    set(facet, value, range, range);
  }

  /**
   * Sets a facet.
   *
   * @param clause the whole clause, as problems show it
   * @param range the value in it
   */
  <T> void set(Facet<T> facet, T value, TextRange clause, TextRange range) {
    Given<T> given = Given.stated(value, said.spot().at(range));
    facets.put(facet, new Told<>(Optional.of(given), said.spot().text(clause)));
  }

  /** Sets a facet to the name in a clause, or to what the name means. */
  void setNamed(Facet<String> facet, String value, Clause.Named clause) {
    set(facet, value, clause.range(), clause.name().range());
  }

  /** Sets all that another claim of the same statement sets. */
  void setAll(Claim other) {
    facets.putAll(other.facets);
  }

  boolean sets(Facet<?> facet) {
    return facets.containsKey(facet);
  }

  Iterable<Facet<?>> facets() {
    return facets.keySet();
  }

  <T> Given<T> get(Facet<T> facet) {
    return find(facet).orElseThrow();
  }

  /** What it sets the facet to, if it does. */
  <T> Optional<Given<T>> find(Facet<T> facet) {
    Told<?> told = facets.get(facet);
    if (told == null) {
      return Optional.empty();
    }
    // set is the only way in, and takes a facet with a value of its type
    @SuppressWarnings("unchecked")
    Optional<Given<T>> given = (Optional<Given<T>>) (Optional<?>) told.given();
    return given;
  }

  boolean agrees(Claim other, Facet<?> facet) {
    return get(facet).value().equals(other.get(facet).value());
  }

  /** The clause as written. */
  String shown(Facet<?> facet) {
    return facets.get(facet).shown();
  }
}
