package mullwright.analysis.wall;

/**
 * What an anchor carries at service level.
 *
 * @param in force that pushes it towards the building [N], 0 or more
 * @param out force that pulls it away from the building [N], 0 or more
 * @param down weight [N]; 0 for anchors that let slide
 */
public record AnchorLoad(double in, double out, double down) {}
