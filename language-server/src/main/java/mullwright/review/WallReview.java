package mullwright.review;

import java.util.List;
import java.util.Optional;
import mullwright.layout.WallLayout;
import mullwright.quantity.UnitSystem;

/**
 * What changed between two states of one wall, and what follows.
 *
 * @param name of the newer; of the older if it is gone
 * @param old the older as laid out, if it was there; {@code now} the newer
 * @param changes what the text says otherwise; each effect points at these by index
 * @param pieces every piece that came, went or is made another way
 * @param fixings every anchor and splice that came, went or is another
 * @param goods every thing of which more or less is bought
 * @param reactions every reaction that changed
 * @param tripped findings the newer has and the older had not, {@code mended} the reverse
 * @param standing how many findings both have
 */
public record WallReview(
    String name,
    Optional<WallLayout> old,
    Optional<WallLayout> now,
    List<Change> changes,
    List<PieceChange> pieces,
    List<FixingChange> fixings,
    List<GoodsChange> goods,
    List<ReactionChange> reactions,
    List<FindingChange> tripped,
    List<FindingChange> mended,
    int standing,
    Wording wording) {
  public WallReview {
    changes = List.copyOf(changes);
    pieces = List.copyOf(pieces);
    fixings = List.copyOf(fixings);
    goods = List.copyOf(goods);
    reactions = List.copyOf(reactions);
    tripped = List.copyOf(tripped);
    mended = List.copyOf(mended);
  }

  /** Words a change; needs both walls at hand. */
  public interface Wording {
    /** The change as one sentence without a stop. */
    String of(Change change, UnitSystem units);
  }

  /** The change of that index in words. */
  public String words(int change, UnitSystem units) {
    return wording.of(changes.get(change), units);
  }

  /** True if nothing at all differs. */
  public boolean empty() {
    return old.isPresent() == now.isPresent()
        && changes.isEmpty()
        && pieces.isEmpty()
        && goods.isEmpty()
        && reactions.isEmpty()
        && tripped.isEmpty()
        && mended.isEmpty();
  }
}
