package mullwright.drawing;

/**
 * How a line is drawn.
 *
 * @param weight its width
 * @param type continuous or dashed
 * @param tone its colour
 */
public record Pen(LineWeight weight, LineType type, Tone tone) {
  /** Visible edges. */
  public static final Pen EDGE = of(LineWeight.WIDE);

  /** Edges of narrow parts. */
  public static final Pen FINE_EDGE = of(LineWeight.MEDIUM);

  /** Edges that are cut. */
  public static final Pen CUT = of(LineWeight.BROAD);

  /** Dimension lines, leaders. */
  public static final Pen THIN = of(LineWeight.NARROW);

  /** Edges behind something. */
  public static final Pen HIDDEN = new Pen(LineWeight.NARROW, LineType.DASHED, Tone.SOFT);

  /** Centre and grid lines. */
  public static final Pen CENTRE = new Pen(LineWeight.NARROW, LineType.LONG_DASH_DOT, Tone.INK);

  /** What is by others. */
  public static final Pen OTHERS =
      new Pen(LineWeight.NARROW, LineType.LONG_DASH_DOUBLE_DOT, Tone.INK);

  /** Hatch lines. */
  public static final Pen HATCH = new Pen(LineWeight.FINE, LineType.CONTINUOUS, Tone.SOFT);

  /** The border of a sheet. */
  public static final Pen BORDER = of(LineWeight.EXTRA_WIDE);

  /** A continuous line in ink. */
  public static Pen of(LineWeight weight) {
    return new Pen(weight, LineType.CONTINUOUS, Tone.INK);
  }

  /** The same in another colour. */
  public Pen in(Tone other) {
    return new Pen(weight, type, other);
  }
}
