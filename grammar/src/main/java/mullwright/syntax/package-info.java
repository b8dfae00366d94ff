/**
 * Text to tree: reads wall text into immutable records with ranges, comments kept, and a list of
 * problems.
 *
 * <p>Entry: {@link mullwright.syntax.ParsedFile}. Reading never fails and never throws: broken text
 * yields the statements that could be read and one problem for each mistake. No node holds meaning:
 * names are words, numbers are literals with their unit as written. The ANTLR grammars and all that
 * is generated from them stay inside this package; the lexer's table is made of them beside it.
 */
package mullwright.syntax;
