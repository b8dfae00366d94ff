/**
 * Pieces of a wall as an editor shows them: where each stands in the text, its name, and a line on
 * what it is and carries.
 *
 * <p>Entry: {@link mullwright.server.piece.WallPieces}, the pieces of one wall. Shared by the load
 * path, the tree of types, lenses, and going from a place to the part a piece is made of. Computes
 * nothing: numbers come from layout and analysis.
 */
package mullwright.server.piece;
