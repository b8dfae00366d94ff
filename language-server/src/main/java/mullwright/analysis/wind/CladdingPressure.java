package mullwright.analysis.wind;

/**
 * Design pressures of a part of a wall by ASCE 7, both ways, in its interior and its edge zone.
 *
 * <p>All at strength level. Each is at least 16 psf (766 Pa) in its direction, as section 30.2.2
 * demands; the coefficients are those before that minimum.
 *
 * @param coefficients external pressure coefficients GC_p
 * @param inward pressure towards the wall, in zones 4 and 5 alike [Pa], positive
 * @param outwardZone4 suction in the interior of the wall [Pa], negative
 * @param outwardZone5 suction near a corner [Pa], negative
 * @param minimumGoverns whether one of the three was raised to the minimum
 */
public record CladdingPressure(
    Coefficients coefficients,
    double inward,
    double outwardZone4,
    double outwardZone5,
    boolean minimumGoverns) {

  /** Load factor of wind in allowable-stress combinations, 0.6W. */
  public static final double ALLOWABLE = 0.6;

  /** 16 psf [Pa]. */
  public static final double MINIMUM = 16 * 4.4482216152605 / (0.3048 * 0.3048);

  /**
   * External pressure coefficients GC_p.
   *
   * @param positive towards the wall, zones 4 and 5
   * @param zone4 away from the wall in its interior, negative
   * @param zone5 away from the wall near a corner, negative
   */
  public record Coefficients(double positive, double zone4, double zone5) {}

  /** The same pressures at the level of allowable-stress design. */
  public CladdingPressure allowable() {
    return new CladdingPressure(
        coefficients,
        ALLOWABLE * inward,
        ALLOWABLE * outwardZone4,
        ALLOWABLE * outwardZone5,
        minimumGoverns);
  }

  static CladdingPressure of(
      Coefficients coefficients, double pressureInward, double pressureOutward, double internal) {
    double inward = pressureInward * coefficients.positive() + internal;
    double four = pressureOutward * coefficients.zone4() - internal;
    double five = pressureOutward * coefficients.zone5() - internal;
    return new CladdingPressure(
        coefficients,
        Math.max(inward, MINIMUM),
        Math.min(four, -MINIMUM),
        Math.min(five, -MINIMUM),
        inward < MINIMUM || four > -MINIMUM || five > -MINIMUM);
  }
}
