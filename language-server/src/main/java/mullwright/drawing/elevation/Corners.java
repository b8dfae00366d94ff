package mullwright.drawing.elevation;

import mullwright.model.Grid;
import mullwright.quantity.QuantityPrinter;
import mullwright.quantity.Unit;

/** Words for the turns of a wall. */
final class Corners {
  private Corners() {}

  /** {@code corner 90°}. */
  static String words(Grid.Corner corner) {
    String angle = QuantityPrinter.in(Unit.DEGREE, corner.angle().value());
    return "corner " + angle.replace(" deg", "°");
  }
}
