package mullwright.layout;

import java.util.Optional;
import mullwright.model.AnchorUse;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * An anchor or clip where it sits.
 *
 * @param index in {@link WallLayout#anchors()}
 * @param y its bolt line (anchors) or the centre of the horizontal it sits at (clips)
 * @param vertical index of the length it holds in {@link WallLayout#verticals()}, or -1 if no
 *     length passes there
 * @param part the catalog's anchor, if one is named and exists
 * @param name {@code dead-load anchor of vertical C at L2}
 */
public record PlacedAnchor(
    int index, AnchorUse use, Length y, int vertical, Optional<Part.Anchor> part, String name) {}
