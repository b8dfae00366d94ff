package mullwright.drawing;

import java.util.Locale;

/**
 * Kinds of lines. Source: ISO 128-2:2020, basic types 01, 02, 10, 12 (from memory): a dash is 12, a
 * long dash 24, a dot ½ and a gap 3 widths of the line. Widths are taken as of a line of 0.25 mm,
 * so that dashes of neighbouring lines look alike.
 */
public enum LineType {
  CONTINUOUS(),
  /** Edges that are hidden. */
  DASHED(3, 0.75),
  /** Centre and grid lines. */
  LONG_DASH_DOT(6, 0.75, 0.12, 0.75),
  /** What stands beside and is by others; lines where sheets meet. */
  LONG_DASH_DOUBLE_DOT(6, 0.75, 0.12, 0.75, 0.12, 0.75);

  private final double[] dashes;

  LineType(double... dashes) {
    this.dashes = dashes;
  }

  /** Dashes and gaps in turn [mm]; none for a continuous line. */
  public double[] dashes() {
    return dashes.clone();
  }

  /** Its name in lower case with hyphens. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
