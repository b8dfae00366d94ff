package mullwright.takeoff.cutting;

import java.util.List;
import java.util.Optional;
import mullwright.quantity.Length;

/**
 * One bar of a plan; {@code pieces + kerf + 2 × end trim + drop} is its length, exactly.
 *
 * @param stock its full length
 * @param lot the lot of the rack it comes from, empty if it is bought
 * @param pieces in the order they are cut, longest first
 * @param kerf length turned to chips, trimming cuts not counted
 * @param drop what is left before the trimmed far end
 */
public record CutBar(
    Length stock, Optional<Rack.Lot> lot, List<CutPiece> pieces, Length kerf, Length drop) {
  public CutBar {
    pieces = List.copyOf(pieces);
  }

  /** True if both are cut alike: same stock, same marks and lengths in the same order. */
  public boolean alike(CutBar other) {
    if (!stock.equals(other.stock)
        || lot.isPresent() != other.lot.isPresent()
        || pieces.size() != other.pieces.size()) {
      return false;
    }
    for (int i = 0; i < pieces.size(); i++) {
      CutPiece mine = pieces.get(i);
      CutPiece theirs = other.pieces.get(i);
      if (!mine.mark().equals(theirs.mark())
          || !mine.wall().equals(theirs.wall())
          || !mine.length().equals(theirs.length())) {
        return false;
      }
    }
    return true;
  }
}
