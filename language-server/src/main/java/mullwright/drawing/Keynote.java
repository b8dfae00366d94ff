package mullwright.drawing;

import java.util.List;
import mullwright.layout.PieceRef;

/**
 * A note on what a check found, keyed by its number.
 *
 * @param number from 1
 * @param text one sentence
 * @param pieces what it is about; none for one about the whole wall
 */
public record Keynote(int number, String text, List<PieceRef> pieces) {
  public Keynote {
    pieces = List.copyOf(pieces);
  }
}
