/**
 * Connects a wall as laid out to the methods of analysis: which loads, supports and joints each
 * vertical has, and what the methods answer.
 *
 * <p>Entry: {@link mullwright.analysis.wall.WallAnalysis}. Every number is an aid to drafting: a
 * licensed engineer and the local code govern. Nothing here judges a result; rules do.
 */
package mullwright.analysis.wall;
