package mullwright.syntax;

/** Feet-inch literals as text: their one spelling, and which is which. */
public final class Literals {
  private Literals() {}

  /** True for feet alone: {@code 5'}. */
  static boolean isFeet(String literal) {
    return literal.endsWith("'") || literal.endsWith("\u2032") || literal.endsWith("\u2019");
  }

  /** True for inches alone: {@code 6 1/2"}. */
  static boolean isInches(String literal) {
    String plain = plainMarks(literal);
    return plain.endsWith("\"") && plain.indexOf('\'') < 0;
  }

  /** With ' and " for all pasted marks. */
  static String plainMarks(String literal) {
    return literal
        .replace('\u2032', '\'')
        .replace('\u2019', '\'')
        .replace('\u2033', '"')
        .replace('\u201d', '"');
  }

  /**
   * The one spelling of a length: {@code 5'-6 1/2"} for {@code 5′-6-1/2″}, {@code 5' 6 1/2"} and
   * for one that lacks its inch mark.
   */
  public static String spelling(String literal) {
    String plain = plainMarks(literal);
    int foot = plain.indexOf('\'');
    String inches = plain.substring(foot + 1).strip();
    if (inches.isEmpty()) {
      return plain;
    }
    if (inches.startsWith("-")) {
      inches = inches.substring(1);
    }
    inches = inches.replaceAll("[ \\t\\u00a0]+|-", " ");
    String marked = inches.endsWith("\"") ? inches : inches + "\"";
    return foot < 0 ? marked : plain.substring(0, foot + 1) + "-" + marked;
  }
}
