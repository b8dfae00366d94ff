package mullwright.model;

import mullwright.quantity.Length;

/** Two elevations: at the left end and at the right end. Equal for what is level. */
record Slope(Length left, Length right) {
  static Slope level(Length length) {
    return new Slope(length, length);
  }

  Slope plus(Length offset) {
    return new Slope(left.plus(offset), right.plus(offset));
  }
}
