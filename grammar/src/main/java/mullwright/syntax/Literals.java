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
   * The one spelling of a number or length: {@code 5'-6 1/2"} for {@code 5′6-1/2″}, {@code 5' 6
   * 1/2"} and for one that lacks its inch mark; {@code 0.5} for {@code .5}.
   */
  public static String spelling(String literal) {
    String plain = plainMarks(literal);
    boolean number = plain.indexOf('\'') < 0 && plain.indexOf('"') < 0 && plain.indexOf('/') < 0;
    if (number) {
      return plain.startsWith(".") ? "0" + plain : plain;
    }
    StringBuilder spelt = new StringBuilder(plain.length() + 2);
    int foot = plain.indexOf('\'');
    if (foot >= 0) {
      spelt.append(plain.startsWith(".") ? "0" : "").append(plain, 0, foot + 1);
    }
    inches(plain.substring(foot + 1), spelt);
    return spelt.toString();
  }

  /** Before the inches a dash, before their fraction a space, whatever stood there. */
  private static void inches(String plain, StringBuilder spelt) {
    boolean afterFeet = spelt.length() > 0;
    int from = spelt.length();
    boolean parted = false;
    for (int i = 0; i < plain.length(); i++) {
      char c = plain.charAt(i);
      if (c == '-' || c == ' ' || c == '\t' || c == '\u00a0') {
        parted = true;
        continue;
      }
      if (spelt.length() == from) {
        spelt.append(afterFeet ? "-" : "").append(c == '.' ? "0" : "");
      } else if (parted) {
        spelt.append(' ');
      }
      parted = false;
      spelt.append(c);
    }
    if (spelt.length() > from && spelt.charAt(spelt.length() - 1) != '"') {
      spelt.append('"');
    }
  }
}
