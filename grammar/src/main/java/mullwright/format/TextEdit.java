package mullwright.format;

/**
 * A stretch of text that gives way to another.
 *
 * @param start first code unit that goes, counted from the start of the file
 * @param end code unit after the last that goes
 * @param text what comes instead
 */
public record TextEdit(int start, int end, String text) {}
