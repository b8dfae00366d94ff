/**
 * The one door to files, and what a wall is at one moment.
 *
 * <p>Entry: {@link mullwright.workspace.Workspace}, which takes edits and hands out an immutable
 * {@link mullwright.workspace.Snapshot} after each. A snapshot computes model, layout and findings
 * when first asked, and takes over from its predecessor whatever was made from the very same text.
 * {@link mullwright.workspace.Cursor} tells what is under an offset, for every face alike.
 *
 * <p>It knows no protocol of an editor, words no finding of its own but those about files that
 * cannot be read, and computes nothing about walls itself.
 */
package mullwright.workspace;
