package mullwright.drawing;

import java.util.Locale;

/**
 * Colours, named by what they are for. A drawing must be readable without them: what they tell is
 * told by hatch, line or word too.
 */
public enum Tone {
  /** Lines and letters. */
  INK(0x1d2329),
  /** Lines that step back: hatches, hidden edges. */
  SOFT(0x7b8794),
  PAPER(0xffffff),
  /** Metal seen from outdoors. */
  METAL(0xf4f2ec),
  /** Glass one sees through. */
  GLASS(0xe6f1f4),
  /** Glass one does not see through. */
  SPANDREL(0xe9e6df),
  /** Openings by others. */
  OTHERS(0xf7f7f7),
  /** What a check found. */
  FINDING(0xb3261e);

  private final int rgb;

  Tone(int rgb) {
    this.rgb = rgb;
  }

  /** On white paper, as {@code 0xRRGGBB}. */
  public int rgb() {
    return rgb;
  }

  /** Its name in lower case. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
