/**
 * Exact lengths and checked units, with reading and printing of both unit systems.
 *
 * <p>Knows nothing of walls, files or text positions, and imports no other package of this project.
 */
package mullwright.quantity;
