package mullwright.takeoff;

import mullwright.model.Origin;
import mullwright.quantity.Length;

/**
 * A bar or tube inside one length of a vertical.
 *
 * @param part name of the reinforcement
 * @param vertical index of the length it stands in
 * @param from its lower end, {@code to} its upper end
 * @param name {@code reinforcement of vertical C, upper length, L2 to Roof}
 */
public record ReinforcingBar(
    String part, int vertical, Length from, Length to, String name, Origin origin) {
  /** Cut length. */
  public Length length() {
    return to.minus(from);
  }
}
