package mullwright.layout;

import mullwright.model.Members;
import mullwright.quantity.Length;

/**
 * An open joint between two lengths of a vertical.
 *
 * @param index in {@link WallLayout#splices()}
 * @param y centre of the open joint
 * @param below index of the length under it, {@code above} of the length over it, in {@link
 *     WallLayout#verticals()}
 * @param name {@code splice of vertical C above L2}
 */
public record SpliceJoint(
    int index, Members.Splice splice, int line, Length y, int below, int above, String name) {}
