/**
 * Makes the lexer's table of the grammar, while the grammar is built.
 *
 * <p>The lexer that ANTLR generates works its automaton out on the way, from the first text on, in
 * every process anew. The automaton hangs on no text, so it is made here once, of that very lexer:
 * the grammar stays the one truth. Runs between the compiling of the generated lexer and that of
 * all else, is in no jar that is run, and nothing else of the house knows it.
 */
package mullwright.automaton;
