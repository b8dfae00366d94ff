package mullwright.analysis.glass;

/** Impact category that safety glazing must meet (16 CFR 1201, by IBC table 2406.2(1)). */
public enum SafetyCategory {
  /** Category I: panes of at most 9 ft². */
  CATEGORY_I,
  /** Category II: panes of more than 9 ft². */
  CATEGORY_II;

  private static final double LIMIT = 9 * 0.3048 * 0.3048;

  /** Category by the area of one pane [m²]; doors and tub enclosures may ask for more. */
  static SafetyCategory of(double area) {
    return Limits.above(area, LIMIT) ? CATEGORY_II : CATEGORY_I;
  }
}
