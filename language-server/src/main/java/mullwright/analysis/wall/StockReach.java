package mullwright.analysis.wall;

import java.util.Optional;
import mullwright.derivation.Derivation;
import mullwright.model.Given;
import mullwright.model.Part;
import mullwright.model.Wall;
import mullwright.quantity.Length;

/**
 * The longest piece that can be cut from the stock of a profile: longest bar − 2 × end trim.
 *
 * @param longest the longest stock length
 * @param endTrim taken off each end of a bar
 */
public record StockReach(Given<Length> longest, Given<Length> endTrim) {

  /** The reach of a profile in a wall; empty if its catalog states no stock length. */
  public static Optional<StockReach> of(Part.Profile profile, Wall wall) {
    Given<Length> longest = null;
    for (Part.Stock stock : profile.stock()) {
      boolean longer = longest == null || stock.length().value().isLongerThan(longest.value());
      longest = longer ? stock.length() : longest;
    }
    return Optional.ofNullable(longest)
        .map(length -> new StockReach(length, wall.fabrication().endTrim()));
  }

  /** Longest piece. */
  public Length value() {
    return longest.value().minus(endTrim.value().times(2));
  }

  /** Longest piece with how it came about. */
  public Derivation explain() {
    return Derivation.computed(
        "longest piece",
        value(),
        "longest stock length − 2 × end trim",
        "geometry",
        Inputs.length("longest stock length", longest),
        Inputs.length("end trim", endTrim));
  }
}
