package mullwright.syntax;

/**
 * A comment, kept with its place.
 *
 * @param text with its marks
 * @param documents true for {@code ///}, which documents the next statement
 */
public record Comment(String text, boolean documents, TextRange range) {}
