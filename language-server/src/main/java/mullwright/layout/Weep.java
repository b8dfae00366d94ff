package mullwright.layout;

import mullwright.quantity.Length;

/**
 * A weep: where the zone of a lite drains through the plate under it.
 *
 * @param cell index of the lite it serves in {@link WallLayout#cells()}
 * @param cover index of the pressure plate it is in, in {@link WallLayout#covers()}, or -1 if no
 *     plate lies there
 * @param x where along the wall
 * @param fromEnd from the nearer end of the daylight opening
 * @param moved true if it had to give way to a setting block
 */
public record Weep(int cell, int cover, Length x, Length fromEnd, boolean moved) {}
