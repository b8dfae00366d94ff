package mullwright.model;

import java.util.Optional;
import mullwright.quantity.Length;

/**
 * A place in height, found.
 *
 * @param at its elevation
 * @param base the floor or row it is measured from, or null for the datum
 * @param offset above the base, or above the datum
 * @param stated true if the text gives a length, false for a place right at what is named
 * @param outright true if the base is named by a name of its own, not by a pattern
 */
record Placed(
    Slope at, Heights.Base base, Length offset, boolean stated, boolean outright, Origin origin) {
  /** The floor it belongs to, or -1. */
  int floor() {
    return base == null ? -1 : base.floor();
  }

  /** The row it is measured from, or -1. */
  int row() {
    return base == null ? -1 : base.row();
  }

  Height height() {
    return height(at.left());
  }

  /** The same place where it is at another elevation, as along a slope. */
  Height height(Length elevation) {
    Length above = offset.plus(elevation.minus(at.left()));
    return new Height(elevation, Optional.ofNullable(base).map(Heights.Base::name), above, origin);
  }
}
