/**
 * In which order a wall is put up: steps, what must come before what and why, and an order that
 * keeps all of it.
 *
 * <p>Begin with {@link mullwright.installation.WorkGraph}. Nothing here weighs a load or knows an
 * hour: an order is a matter of what stands in whose way.
 */
package mullwright.installation;
