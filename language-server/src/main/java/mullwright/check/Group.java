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
  TEXT
}
