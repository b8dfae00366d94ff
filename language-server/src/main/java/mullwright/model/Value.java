package mullwright.model;

import java.util.Optional;
import mullwright.quantity.Quantity;
import mullwright.quantity.Unit;

/**
 * What an expression computes to.
 *
 * @param bare true for a number made of bare numbers only: it counts, and where a length is asked
 *     for it is one in the file's {@code units}
 */
record Value(Quantity quantity, boolean bare) {
  /** As a length in that unit if it is bare. */
  Optional<Quantity> inUnit(Unit unit) {
    if (!bare) {
      return Optional.of(quantity);
    }
    return unit == null ? Optional.empty() : Optional.of(Quantity.of(quantity.si(), unit));
  }
}
