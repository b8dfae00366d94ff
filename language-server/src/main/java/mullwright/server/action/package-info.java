/**
 * What an editor may offer to do to a text: mends and refactorings, one class each.
 *
 * <p>Entry: {@link mullwright.server.action.ActionSource}. A source is found by itself ({@code
 * META-INF/services}, written by {@code @AutoService}) and says in words what it would do; what the
 * text would become is worked out when a reader picks it.
 */
package mullwright.server.action;
