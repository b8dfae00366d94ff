package mullwright.analysis.movement;

import mullwright.analysis.Guard;

/**
 * Temperatures of the metal surface over its life, all on one scale with kelvin-sized degrees.
 *
 * @param coldest least temperature [K]
 * @param hottest greatest temperature [K], more than {@code coldest}
 * @param whenSet temperature when the piece is fixed [K], between the two
 */
public record MetalTemperature(double coldest, double hottest, double whenSet) {

  /** Warming from setting to the hottest day [K]. */
  public double rise() {
    return hottest - whenSet;
  }

  /** Cooling from setting to the coldest day [K]. */
  public double fall() {
    return whenSet - coldest;
  }

  Guard check(Guard guard) {
    return guard
        .finite("coldest metal temperature", coldest, "K")
        .finite("hottest metal temperature", hottest, "K")
        .that(hottest > coldest, "hottest metal temperature", hottest, "K", "above the coldest one")
        .that(
            whenSet >= coldest && whenSet <= hottest,
            "metal temperature when set",
            whenSet,
            "K",
            "between the coldest and the hottest one");
  }
}
