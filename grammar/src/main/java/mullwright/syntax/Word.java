package mullwright.syntax;

/**
 * A name or a fixed word as it stands in the text.
 *
 * @param text the word without its quotes, if it was quoted
 * @param quoted true if it stood in quotes
 * @param range where it stands, quotes included
 */
public record Word(String text, boolean quoted, TextRange range) {}
