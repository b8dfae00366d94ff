/**
 * Drawings in the open drawing exchange format, ASCII, release 12: lines, circles, arcs, texts,
 * blocks and layers by kind, as large as the thing itself.
 *
 * <p>Release 12 is the one every reader reads. It knows no unit, so a note says it, and no fill but
 * that of small solid shapes, so glass is outlined and hatched only.
 */
package mullwright.drawing.dxf;
