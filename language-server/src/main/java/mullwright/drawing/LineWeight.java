package mullwright.drawing;

/**
 * Widths of lines [mm]. Source: ISO 128-2:2020 and the series of ISO 128-20, ratio √2 (from
 * memory); in drawings of buildings narrow, wide and extra wide stand 1 : 2 : 4.
 */
public enum LineWeight {
  /** Hatches seen from far. */
  FINE(0.13),
  /** Dimensions, leaders, hatches, centre lines. */
  NARROW(0.18),
  /** Edges where a wide line would fill the part; hidden edges. */
  MEDIUM(0.25),
  /** Visible edges. */
  WIDE(0.35),
  /** Cut edges. */
  BROAD(0.5),
  /** Border of the sheet; what must be seen first. */
  EXTRA_WIDE(0.7);

  private final double millimetres;

  LineWeight(double millimetres) {
    this.millimetres = millimetres;
  }

  public double millimetres() {
    return millimetres;
  }
}
