/**
 * What each noun of a wall says when the pointer rests on it.
 *
 * <p>Entry: {@link mullwright.server.hover.Pages}. A {@link mullwright.server.hover.Page} is told
 * once and written as Markdown or as plain text. Every length is told in both systems of units, the
 * file's own first; every number that was computed comes with its formula, what was put in, its
 * source, and which inputs are defaults.
 *
 * <p>Nothing is computed here: pieces, traces and marks are the layout's, loads the analysis's.
 */
package mullwright.server.hover;
