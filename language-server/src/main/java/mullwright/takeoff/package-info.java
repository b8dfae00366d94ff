/**
 * What is bought and what the shop makes: tickets of the pieces, counts of everything, the ledger
 * of marks.
 *
 * <p>Begin with {@link mullwright.takeoff.Takeoff} for counts and {@link
 * mullwright.takeoff.Tickets} for pieces. Nesting of cut lengths stands in {@code takeoff.nesting}.
 * Nothing here computes a load, prints, or opens a file.
 */
package mullwright.takeoff;
