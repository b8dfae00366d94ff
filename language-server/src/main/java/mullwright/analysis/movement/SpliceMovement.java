package mullwright.analysis.movement;

import mullwright.analysis.Guard;

/**
 * What moves the two sides of a splice towards one another and apart.
 *
 * @param expansion coefficient of linear expansion of the metal [1/K]
 * @param distance distance between the dead-load supports of the lengths below and above the splice
 *     [m]; normally one storey
 * @param temperature temperatures of the metal
 * @param slabDown how far the upper support sinks against the lower one under live load [m]; from
 *     the structural engineer
 * @param slabUp how far it rises again above its level when the splice was set [m]
 * @param shortening creep and shortening of the building's columns between the two [m]
 */
public record SpliceMovement(
    double expansion,
    double distance,
    MetalTemperature temperature,
    double slabDown,
    double slabUp,
    double shortening) {

  /** Closing by heat alone [m]. */
  public double thermalClosing() {
    return expansion * distance * temperature.rise();
  }

  /** Opening by cold alone [m]. */
  public double thermalOpening() {
    return expansion * distance * temperature.fall();
  }

  /** Closing by everything [m]. */
  public double closing() {
    return thermalClosing() + slabDown + shortening;
  }

  /** Opening by everything [m]. */
  public double opening() {
    return thermalOpening() + slabUp;
  }

  Guard check(Guard guard) {
    return temperature
        .check(guard)
        .notNegative("coefficient of expansion", expansion, "1/K")
        .notNegative("distance between dead-load supports", distance, "m")
        .notNegative("slab deflection", slabDown, "m")
        .notNegative("upward slab movement", slabUp, "m")
        .notNegative("shortening of the building", shortening, "m");
  }
}
