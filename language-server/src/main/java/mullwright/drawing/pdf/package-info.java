/**
 * Drawings as PDF: lines as lines, text as text in a font that the file carries, kinds of things as
 * layers that a reader can switch off.
 */
package mullwright.drawing.pdf;
