/**
 * One class a rule: facts in, findings out. Also puts the problems raised while reading into words.
 *
 * <p>Entry: {@code Rules} (finds every {@link mullwright.check.Rule} by itself) and {@code
 * Checker}. A rule computes nothing heavy: what nature does to the wall is {@code analysis}.
 * Nothing here prints, opens a file or knows the protocol of an editor.
 */
package mullwright.check;
