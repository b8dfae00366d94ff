package mullwright.layout;

import mullwright.model.Origin;
import mullwright.model.Part;
import mullwright.quantity.Length;

/**
 * A horizontal between two verticals.
 *
 * @param index in {@link WallLayout#horizontals()}
 * @param row by index
 * @param firstBay the leftmost bay it crosses, {@code lastBay} the rightmost; equal unless a
 *     vertical butts it in between
 * @param leftLine the line whose vertical holds its left end, {@code rightLine} its right end
 * @param left x of its left end, after the end allowance; {@code right} of its right end
 * @param yLeft y of its centre at its left end; {@code yRight} at its right end
 * @param length cut length (the longest, along the slope, if it slopes)
 * @param name as the shop names it: {@code horizontal R2, bay C-D}
 * @param origin the statement that made it
 */
public record HorizontalPiece(
    int index,
    int row,
    int firstBay,
    int lastBay,
    int leftLine,
    int rightLine,
    Part.Profile profile,
    Length left,
    Length right,
    Length yLeft,
    Length yRight,
    Length length,
    String name,
    Origin origin) {}
