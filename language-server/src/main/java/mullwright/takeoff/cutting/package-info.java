/**
 * From the pieces of walls to bars: what may be cut from the same stock, and the plan that cuts it.
 *
 * <p>Knows layouts and the nesting of lengths; knows no report.
 */
package mullwright.takeoff.cutting;
