/**
 * Drawings as SVG: text that stays text, kinds of things as groups, every piece a group with its
 * mark and its place in the text.
 *
 * <p>Written by hand and not through a document tree: a tower is some ten thousand elements, a
 * generator behind {@code Graphics2D} knows neither groups nor classes, and colours must be left to
 * the page that shows the drawing.
 */
package mullwright.drawing.svg;
