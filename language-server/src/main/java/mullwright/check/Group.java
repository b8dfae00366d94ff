package mullwright.check;

/** The groups of the catalogue of checks. */
public enum Group {
  SPLICE,
  ANCHOR,
  ISOLATION,
  SPAN,
  GLASS,
  FABRICATION,
  WEATHER,
  INSTALLATION,
  TEXT;

  /**
   * How much of a wall its rules lean on: 0 if on its beams and weights, 1 if on wind and glass, 2
   * if on places and holes alone. They may begin while the frame is still being solved.
   */
  int lightness() {
    return switch (this) {
      case SPLICE, ANCHOR, SPAN -> 0;
      case GLASS, WEATHER, TEXT -> 1;
      case ISOLATION, FABRICATION, INSTALLATION -> 2;
    };
  }
}
