package mullwright.analysis.strength;

/** Thousand pounds a square inch, in which the source tables and buckling constants stand. */
final class Ksi {
  /** 1 ksi [Pa]: 4448.2216152605 N on 0.0254² m². */
  static final double PASCALS = 4448.2216152605 / (0.0254 * 0.0254);

  private Ksi() {}
}
