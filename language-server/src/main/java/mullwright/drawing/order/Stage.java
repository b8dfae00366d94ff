package mullwright.drawing.order;

import java.util.List;
import mullwright.layout.PieceRef;

/**
 * Some steps of the work that are shown in one picture.
 *
 * @param number of the picture, from 1
 * @param sentence what is done
 * @param pieces it is done to
 */
public record Stage(int number, String sentence, List<PieceRef> pieces) {
  public Stage {
    pieces = List.copyOf(pieces);
  }
}
