package mullwright.drawing.svg;

import java.util.Locale;
import mullwright.layout.PieceRef;

/** Words for kinds of pieces. */
final class SvgWords {
  private SvgWords() {}

  /** {@code vertical}, {@code cell}. */
  static String of(PieceRef.Kind kind) {
    return kind.name().toLowerCase(Locale.ROOT);
  }
}
