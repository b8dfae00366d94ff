/**
 * What stands behind the lines of a text: the figures that follow from each statement, and how they
 * came about.
 *
 * <p>Entry: {@link mullwright.server.hint.Figures}.
 */
package mullwright.server.hint;
