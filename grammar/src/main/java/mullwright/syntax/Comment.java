package mullwright.syntax;

/**
 * A comment, kept with its place.
 *
 * @param text with its marks
 * @param documents true for {@code ///}, which documents the next statement
 */
public record Comment(String text, boolean documents, TextRange range) {
  /** True if it wants an end and none follows: it is taken to reach to the end of its line. */
  public boolean isOpen() {
    return text.startsWith("/*") && (text.length() < 4 || !text.endsWith("*/"));
  }
}
