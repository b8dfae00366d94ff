/**
 * What nature does to a wall: bending, movement, strength, contact of metals, drift, fasteners.
 *
 * <p>One class a published method, named by the method, in a sub-package by phenomenon. Every
 * method is a static pure function from a plain record to an {@link mullwright.analysis.Outcome} in
 * SI units (metres, newtons, pascals, kelvins unless a component says otherwise); input outside the
 * method's range gets a stated {@link mullwright.analysis.Refusal}, never an extrapolation. It
 * knows no syntax, no text and no file, and decides no severity.
 *
 * <p>Results are aids to drafting. A licensed engineer and the local code govern.
 */
package mullwright.analysis;
