/**
 * How far pieces move with heat and with the building, and what room that takes.
 *
 * <p>Entry: {@link mullwright.analysis.movement.SpliceGap}; {@link
 * mullwright.analysis.movement.SpliceRange} tells the joint on the hottest and the coldest day.
 * Movement of slabs is put in, never guessed: it comes from the structural engineer. Nothing here
 * knows where splices or anchors are.
 */
package mullwright.analysis.movement;
