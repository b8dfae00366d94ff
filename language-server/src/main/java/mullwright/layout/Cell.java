package mullwright.layout;

import java.util.Optional;
import mullwright.model.Grid;
import mullwright.model.LiteUse;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * A framed opening and what fills it.
 *
 * @param index in {@link WallLayout#cells()}
 * @param firstBay leftmost bay, {@code lastBay} rightmost (equal unless the bays are one here)
 * @param below the row under it, {@code above} the row over it, by index
 * @param left x of the daylight opening's left edge; so {@code right, bottom, top}
 * @param rectangular false if an edge slopes: sizes are of the bounding rectangle and not checked
 * @param use what the wall puts there, if anything
 * @param glass the make-up, if it is in the catalog
 * @param opening the grid's opening (door, louvre …) that takes it instead of a lite, if one does
 * @param glassWidth glass size, daylight opening and bites; {@code glassHeight} likewise
 * @param biteLeft bite that was added at the left edge; so the others
 * @param name {@code lite in bay C-D, R1 to R2}
 */
public record Cell(
    int index,
    int firstBay,
    int lastBay,
    int below,
    int above,
    Length left,
    Length right,
    Length bottom,
    Length top,
    boolean rectangular,
    Optional<LiteUse> use,
    Optional<Part.Glass> glass,
    Optional<Grid.Opening> opening,
    Length glassWidth,
    Length glassHeight,
    Length biteLeft,
    Length biteRight,
    Length biteBottom,
    Length biteTop,
    String name) {
  /** Width of the daylight opening. */
  public Length daylightWidth() {
    return right.minus(left);
  }

  /** Height of the daylight opening. */
  public Length daylightHeight() {
    return top.minus(bottom);
  }
}
