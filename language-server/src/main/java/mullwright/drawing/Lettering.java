package mullwright.drawing;

/**
 * How letters are drawn.
 *
 * @param height of capital letters [mm]: one of 1.8, 2.5, 3.5, 5, 7, 10. Source: ISO 3098-1:2015,
 *     nominal sizes (from memory); nothing that must be read is below 2.5 (common practice)
 * @param bold true for titles
 * @param tone colour
 */
public record Lettering(double height, boolean bold, Tone tone) {
  /** Dimensions, marks and notes. */
  public static final Lettering NOTE = new Lettering(2.5, false, Tone.INK);

  /** Names of grid lines, levels. */
  public static final Lettering NAME = new Lettering(3.5, false, Tone.INK);

  /** Headings. */
  public static final Lettering HEADING = new Lettering(3.5, true, Tone.INK);

  /** Titles of drawings. */
  public static final Lettering TITLE = new Lettering(5, true, Tone.INK);

  /** Words over the fields of a title block. */
  public static final Lettering CAPTION = new Lettering(1.8, false, Tone.SOFT);

  /** The family of the letters, which PDF carries with it and other forms ask for. */
  public static final String FAMILY = "DejaVu Sans Condensed";

  /**
   * Lines of text stand so many heights of capitals apart. Source: ISO 3098-1, 14/10 + descenders.
   */
  public static final double LINE_PITCH = 1.7;

  /** The same in another colour. */
  public Lettering in(Tone other) {
    return new Lettering(height, bold, other);
  }

  /** The same so high. */
  public Lettering high(double other) {
    return new Lettering(other, bold, tone);
  }

  /** Size of the font: capitals of the family are {@link FontMeasures#CAPITAL} of it [mm]. */
  public double fontSize() {
    return height / FontMeasures.CAPITAL;
  }

  /** Width of a line of text [mm]. */
  public double width(String text) {
    return FontMeasures.of(bold).width(text) * fontSize();
  }
}
