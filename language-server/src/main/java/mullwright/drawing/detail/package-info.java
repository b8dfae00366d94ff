/**
 * Details of a wall: sections through sill, head, intermediate, jamb and mullion, and the splice,
 * from what the catalog states of their parts.
 *
 * <p>Begin with {@link mullwright.drawing.detail.DetailSheets}. What the catalog states no size of
 * (gaskets, depth of plate and cap) is drawn all the same, and the sheet says so.
 */
package mullwright.drawing.detail;
