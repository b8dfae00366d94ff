package mullwright.drawing;

import java.util.Optional;
import mullwright.layout.PieceRef;
import mullwright.model.Origin;

/** What a drawing is told of its pieces by those who know more than the layout. */
public interface Labels {
  /** The mark of a piece, or "". */
  String mark(PieceRef piece);

  /** Where in its file a statement stands, if that is known. */
  Optional<TextPlace> place(Origin statement);

  /** Knows nothing. */
  static Labels none() {
    return new Labels() {
      @Override
      public String mark(PieceRef piece) {
        return "";
      }

      @Override
      public Optional<TextPlace> place(Origin statement) {
        return Optional.empty();
      }
    };
  }
}
