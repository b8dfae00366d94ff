package mullwright.layout;

import java.util.Optional;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * What a profile takes from its line to either side: half widths, and legs at a corner.
 *
 * <p>The halves are made once a profile; every length of a wall uses them.
 *
 * @param profile empty if the text names none that exists
 */
record Widths(
    Optional<Part.Profile> profile,
    Length halfFace,
    Length halfSightline,
    Optional<Length> legLeft,
    Optional<Length> legRight) {
  /** Of a member whose profile nobody knows: what depends on it is left out. */
  static final Widths UNKNOWN =
      new Widths(Optional.empty(), Length.ZERO, Length.ZERO, Optional.empty(), Optional.empty());

  static Widths of(Part.Profile profile) {
    return new Widths(
        Optional.of(profile),
        profile.face().value().half(),
        profile.sightline().value().half(),
        profile.legLeft().map(given -> given.value()),
        profile.legRight().map(given -> given.value()));
  }

  boolean known() {
    return profile.isPresent();
  }

  /** From the line to the edge of the metal on that side. */
  Length toMetal(Side side, boolean corner) {
    return corner ? leg(side).orElse(halfFace) : halfFace;
  }

  /** From the line to the sightline on that side. */
  Length toSightline(Side side, boolean corner) {
    return corner ? leg(side).orElse(halfSightline) : halfSightline;
  }

  /** From the line to the edge of a plate or cap on that side. */
  Length toCover(Side side, boolean corner, Length halfCover) {
    return corner ? leg(side).orElse(halfCover) : halfCover;
  }

  private Optional<Length> leg(Side side) {
    return side == Side.LEFT ? legLeft : legRight;
  }
}
