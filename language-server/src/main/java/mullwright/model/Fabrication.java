package mullwright.model;

import java.util.Map;
import mullwright.quantity.Length;

/**
 * How the shop cuts.
 *
 * @param kerf lost at each cut
 * @param endTrim taken off each end of a bar
 * @param leastDrop shortest rest worth keeping
 * @param facts other properties by word, as written
 */
public record Fabrication(
    Given<Length> kerf,
    Given<Length> endTrim,
    Given<Length> leastDrop,
    Map<String, Given<String>> facts) {
  public Fabrication {
    facts = Map.copyOf(facts);
  }
}
