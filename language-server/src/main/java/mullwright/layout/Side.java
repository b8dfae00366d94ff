package mullwright.layout;

/** A side of a line, seen from outdoors. */
enum Side {
  LEFT,
  RIGHT
}
