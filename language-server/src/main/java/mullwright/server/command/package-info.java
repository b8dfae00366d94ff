/**
 * What an editor may ask for by name: one class a command, found by itself.
 *
 * <p>A command says what is wanted; whatever is worked out for it is worked out elsewhere.
 */
package mullwright.server.command;
