package mullwright.layout;

import java.util.Locale;

/**
 * Points at one piece of a layout.
 *
 * @param kind which list of {@link WallLayout} it is in
 * @param index in that list
 */
public record PieceRef(Kind kind, int index) {
  /** The lists of a layout. */
  public enum Kind {
    VERTICAL,
    HORIZONTAL,
    SPLICE,
    ANCHOR,
    CELL,
    COVER;

    private final String word = name().toLowerCase(Locale.ROOT);

    /** One word in lower case: {@code vertical}. */
    public String word() {
      return word;
    }
  }

  /** One word for it, the same in everything drawn of the same layout: {@code vertical-3}. */
  public String word() {
    return kind.word + "-" + index;
  }
}
