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
   * The one spelling of a length: {@code 5'-6 1/2"} for {@code 5′6-1/2″}, {@code 5' 6 1/2"} and for
   * one that lacks its inch mark.
   */
  public static String spelling(String literal) {
    String plain = plainMarks(literal);
    StringBuilder spelt = new StringBuilder(plain.length() + 2);
    int foot = plain.indexOf('\'');
    if (foot >= 0) {
      spelt.append(plain, 0, foot + 1);
    }
    boolean parted = foot >= 0;
    for (int i = foot + 1; i < plain.length(); i++) {
      char c = plain.charAt(i);
      if (c == '-' || c == ' ' || c == '\t' || c == '\u00a0') {
        // before the inches a dash, before their fraction a space, whatever stood there
        parted = parted || spelt.length() > 0 && spelt.charAt(spelt.length() - 1) != ' ';
        continue;
      }
      if (parted) {
        boolean afterFeet = foot >= 0 && spelt.length() == foot + 1;
        spelt.append(afterFeet ? '-' : ' ');
        parted = false;
      }
      spelt.append(c);
    }
    boolean feetOnly = foot >= 0 && spelt.length() == foot + 1;
    if (!feetOnly && spelt.charAt(spelt.length() - 1) != '"') {
      spelt.append('"');
    }
    return spelt.toString();
  }
}
