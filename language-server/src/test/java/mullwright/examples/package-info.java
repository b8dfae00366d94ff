/**
 * The example walls and catalogs: clean, laid out by the formatter, and consistent in themselves.
 */
package mullwright.examples;
