/**
 * Drawings: what a drafter hands on, painted once and written as SVG, PDF or DXF.
 *
 * <p>A {@link mullwright.drawing.Drawing} paints itself on a {@link mullwright.drawing.Surface} in
 * millimetres of paper, y up. The surface is a dozen strokes and not a {@code Graphics2D}: that one
 * has neither layers nor subjects, makes outlines of text unless told otherwise by each writer, and
 * asks the machine for its fonts, so that bytes would differ from one machine to the next. Nothing
 * here touches the window system.
 *
 * <p>What is drawn says what it is of ({@link mullwright.drawing.Subject}) and what kind of thing
 * it is ({@link mullwright.drawing.Layer}); surfaces keep both.
 */
package mullwright.drawing;
