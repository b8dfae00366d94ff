package mullwright.preview;

import mullwright.quantity.Length;

/**
 * Where things of the wall stand in the drawing: x to the right as on the wall, y down as on a
 * screen, both in millimetres of paper.
 *
 * @param ratio millimetres of the wall to one of paper
 */
record Plane(double ratio) {
  double x(Length length) {
    return length.toMillimetres() / ratio;
  }

  double y(Length length) {
    return -length.toMillimetres() / ratio;
  }

  /** The same of a height in metres. */
  double y(double metres) {
    return -metres * 1000 / ratio;
  }
}
