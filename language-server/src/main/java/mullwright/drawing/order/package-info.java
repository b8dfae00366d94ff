/**
 * The order of work as small pictures: at each step the elevation as far as it stands, with what
 * the step adds in black.
 *
 * <p>Begin with {@link mullwright.drawing.order.OrderSheets}. In which order the work is done is
 * told by whoever asks for the sheets.
 */
package mullwright.drawing.order;
