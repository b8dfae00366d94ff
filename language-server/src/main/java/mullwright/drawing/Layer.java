package mullwright.drawing;

import java.util.Locale;

/** Kinds of things that are drawn; in every form of a drawing each kind can be told apart. */
public enum Layer {
  /** Border of the sheet and its title block. */
  SHEET(7),
  /** Grid lines with their bubbles. */
  GRID(8),
  /** Floors with their level marks. */
  FLOOR(8),
  /** The building behind: slab edges. */
  BUILDING(9),
  /** Lites, their outlines. */
  LITE(4),
  /** Hatches of lites and of cut material. */
  HATCH(9),
  /** Openings by others. */
  OPENING(3),
  /** Verticals and horizontals. */
  MEMBER(7),
  /** Splices. */
  SPLICE(1),
  /** Anchors and clips. */
  ANCHOR(5),
  /** Holes, cuts and notches. */
  HOLE(1),
  /** Fasteners, gaskets, plates and caps. */
  FITTING(6),
  /** Marks of pieces and lites. */
  MARK(7),
  /** Dimension strings. */
  DIMENSION(3),
  /** Notes, titles and legends. */
  NOTE(7),
  /** Keynotes of findings. */
  FINDING(1),
  /** Lines where sheets meet. */
  MATCH(6);

  private final int colour;
  private final String word = name().toLowerCase(Locale.ROOT);

  Layer(int colour) {
    this.colour = colour;
  }

  /** Its name in lower case: {@code dimension}. */
  public String word() {
    return word;
  }

  /** Its index in the table of 255 colours of the drawing exchange format. */
  public int colour() {
    return colour;
  }
}
