/**
 * Exact lengths and checked units, with reading and printing of both unit systems.
 *
 * <p>Enter by {@link mullwright.quantity.Length} (what geometry computes with), {@link
 * mullwright.quantity.Quantity} (what expressions compute with), {@link
 * mullwright.quantity.LengthReader} and {@link mullwright.quantity.QuantityReader} (literals),
 * {@link mullwright.quantity.LengthFormat} and {@link mullwright.quantity.QuantityPrinter} (figures
 * for people). Whatever a user can write ends in an {@link mullwright.quantity.Outcome}, never in
 * an exception.
 *
 * <p>Knows nothing of walls, files or text positions, words no message, and imports no other
 * package of this project.
 */
package mullwright.quantity;
