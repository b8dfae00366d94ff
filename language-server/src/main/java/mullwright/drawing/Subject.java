package mullwright.drawing;

import java.util.Optional;
import mullwright.layout.PieceRef;

/**
 * What is drawn, for whoever points at it.
 *
 * @param kind one word: {@code vertical}, {@code lite}, {@code line}
 * @param piece the piece of the layout, if it is one
 * @param name as the shop names it
 * @param mark of the piece, or ""
 * @param place where in the text it comes from, if known
 */
public record Subject(
    String kind, Optional<PieceRef> piece, String name, String mark, Optional<TextPlace> place) {
  /** Something that is no piece. */
  public static Subject of(String kind, String name) {
    return new Subject(kind, Optional.empty(), name, "", Optional.empty());
  }
}
