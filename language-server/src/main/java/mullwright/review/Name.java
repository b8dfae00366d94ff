package mullwright.review;

/**
 * A name a fact is keyed by, with what it names, so that a rename can be followed.
 *
 * @param id the name in the newer wall if the thing is in both, else its only name
 */
public record Name(Sort sort, String id) implements Comparable<Name> {
  /** What is named. */
  public enum Sort {
    LINE,
    FLOOR,
    ROW,
    /** A part, an opening, a zone, a number: nothing that other facts are keyed by. */
    OTHER
  }

  static Name line(String id) {
    return new Name(Sort.LINE, id);
  }

  static Name floor(String id) {
    return new Name(Sort.FLOOR, id);
  }

  static Name row(String id) {
    return new Name(Sort.ROW, id);
  }

  static Name other(String id) {
    return new Name(Sort.OTHER, id);
  }

  @Override
  public int compareTo(Name other) {
    int bySort = sort.compareTo(other.sort);
    return bySort != 0 ? bySort : id.compareTo(other.id);
  }
}
