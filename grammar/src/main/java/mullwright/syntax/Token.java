package mullwright.syntax;

/**
 * A word, value, mark or comment as it stands in the text.
 *
 * @param kind what its place on the line makes it
 * @param range counted from the start of its segment
 */
public record Token(TokenKind kind, TextRange range) {}
