/**
 * What an editor may ask for by name. One class a command, found by itself; each works without
 * arguments, since some editors can give none.
 *
 * <p>A command says what is wanted; whatever is worked out for it is worked out elsewhere.
 */
package mullwright.server.command;
