package mullwright.preview;

import java.util.Locale;

/** Writes text and numbers into markup. */
final class Markup {
  private Markup() {}

  /** Text that stands for itself in an element or between double quotes. */
  static String escaped(String text) {
    StringBuilder out = new StringBuilder(text.length() + 16);
    for (int at = 0; at < text.length(); at++) {
      char c = text.charAt(at);
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append("&quot;");
        // what steers a terminal or turns the way of reading has no place in a label
        default -> out.append(Character.isISOControl(c) || isTurn(c) ? '\ufffd' : c);
      }
    }
    return out.toString();
  }

  private static boolean isTurn(char c) {
    return c >= '\u202a' && c <= '\u202e' || c >= '\u2066' && c <= '\u2069';
  }

  /** A coordinate, the same in any locale. */
  static String number(double value) {
    String text = String.format(Locale.ROOT, "%.2f", value);
    int end = text.length();
    while (text.charAt(end - 1) == '0') {
      end--;
    }
    if (text.charAt(end - 1) == '.') {
      end--;
    }
    String bare = text.substring(0, end);
    return bare.equals("-0") ? "0" : bare;
  }
}
