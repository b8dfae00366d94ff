/**
 * What an anchor bears, and whether a length hangs from the right number of them.
 *
 * <p>Entries: {@link mullwright.analysis.anchor.AnchorCount}, {@link
 * mullwright.analysis.anchor.DeadLoadReaction}, {@link mullwright.analysis.anchor.AnchorCouple}.
 * Lateral reactions come from {@code analysis.beam}. The capacity of an anchor is the engineer's
 * and is nowhere computed here.
 */
package mullwright.analysis.anchor;
