package mullwright.layout;

import java.util.Optional;
import mullwright.model.Grid;
import mullwright.quantity.Length;

/**
 * An opening in one of its bays.
 *
 * @param index of the opening in the grid
 * @param bottom height of its lower edge in the middle of the bay: the centre of the horizontal
 *     there, or the stated place; {@code top} likewise
 * @param sill the horizontal on its lower edge, if there is one; {@code head} on its upper edge
 * @param openBelow true if nothing of the bay is at or below its lower edge, as under a door;
 *     {@code openAbove} the same at its upper edge
 */
record Span(
    int index,
    Grid.Opening opening,
    int bay,
    Length bottom,
    Length top,
    Optional<Bar> sill,
    Optional<Bar> head,
    boolean openBelow,
    boolean openAbove) {
  /** True for a door or a void: no plates, gaskets or weeps on its side. */
  boolean bare() {
    return opening.kind() == Grid.OpeningKind.DOOR || opening.kind() == Grid.OpeningKind.VOID;
  }

  boolean overlaps(Length from, Length to) {
    return bottom.isShorterThan(to) && from.isShorterThan(top);
  }

  /** The same with the horizontals on its edges only where they count. */
  Span framed(boolean withSill, boolean withHead) {
    return new Span(
        index,
        opening,
        bay,
        bottom,
        top,
        withSill ? sill : Optional.empty(),
        withHead ? head : Optional.empty(),
        openBelow,
        openAbove);
  }
}
