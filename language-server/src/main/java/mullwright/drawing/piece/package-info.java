/**
 * Drawings of single pieces for the shop: a bar with its ends and every hole, measured from its
 * datum.
 *
 * <p>Begin with {@link mullwright.drawing.piece.PieceDrawing}. What is drawn is handed in as a
 * {@link mullwright.drawing.piece.Bar}; nothing here finds a hole.
 */
package mullwright.drawing.piece;
