package mullwright.layout;

import java.util.Comparator;
import java.util.Optional;
import mullwright.model.Origin;
import mullwright.quantity.Length;

/**
 * A hole in a piece, from the piece's own datum: a vertical's or plate's lower end, a horizontal's
 * left end.
 *
 * @param purpose what it is for
 * @param part name of the catalog's part that goes there, or "" if the text names none
 * @param side which wall of the piece it goes through
 * @param along from the datum along the piece
 * @param back from the glass's outer face (z = 0) into the room; empty if nobody states it
 * @param diameter empty if the part states no hole pattern
 * @param fastener what goes through, if the pattern or the wall says
 * @param count how many holes this stands for: 1, or as many as a bracket has bolts; 0 if the part
 *     is there and states no hole pattern
 * @param partner what it holds, as the shop names it
 * @param statement the statement that put the part there
 * @param origin the pattern's line in the catalog, or again the statement
 */
public record DrilledHole(
    Purpose purpose,
    String part,
    HoleSide side,
    Length along,
    Optional<Length> back,
    Optional<Length> diameter,
    Optional<String> fastener,
    int count,
    String partner,
    Origin statement,
    Origin origin) {
  /** From the datum on, then from the glass inwards; equal holes of several parts stay apart. */
  public static final Comparator<DrilledHole> ORDER = DrilledHole::compare;

  // a tower's thousands are sorted at every edit, so no chain of comparators
  private static int compare(DrilledHole one, DrilledHole other) {
    int order = one.along.compareTo(other.along);
    if (order == 0) {
      order = one.back.orElse(Length.ZERO).compareTo(other.back.orElse(Length.ZERO));
    }
    if (order == 0) {
      order = one.side.compareTo(other.side);
    }
    if (order == 0) {
      order = one.purpose.compareTo(other.purpose);
    }
    if (order == 0) {
      order = one.part.compareTo(other.part);
    }
    return order != 0
        ? order
        : one.diameter.orElse(Length.ZERO).compareTo(other.diameter.orElse(Length.ZERO));
  }

  /** What a hole is for. */
  public enum Purpose {
    SHEAR_BLOCK("shear block"),
    CLIP("clip"),
    ANCHOR("anchor"),
    BRACKET("bracket"),
    SLEEVE("splice sleeve"),
    PLATE_FASTENER("plate fastener"),
    WEEP("weep");

    private final String words;

    Purpose(String words) {
      this.words = words;
    }

    /** As the shop says it. */
    public String words() {
      return words;
    }
  }

  /** True if its diameter and its depth are known. */
  public boolean placed() {
    return diameter.isPresent() && back.isPresent();
  }

  /** The same hole once the piece, so long, is turned end for end. */
  DrilledHole turned(Length length) {
    return new DrilledHole(
        purpose,
        part,
        side.turned(),
        length.minus(along),
        back,
        diameter,
        fastener,
        count,
        partner,
        statement,
        origin);
  }
}
