package mullwright.drawing.svg;

/** Writes text so that it may stand in an element or between double quotes. */
final class Escaped {
  private Escaped() {}

  static void append(String text, StringBuilder out) {
    for (int at = 0; at < text.length(); at++) {
      char c = text.charAt(at);
      switch (c) {
        case '&' -> out.append("&amp;");
        case '<' -> out.append("&lt;");
        case '>' -> out.append("&gt;");
        case '"' -> out.append("&quot;");
        default -> {
          if (allowed(text, at)) {
            out.append(c);
          } else {
            out.append('\ufffd');
          }
        }
      }
    }
  }

  // Source: XML 1.0, production 2 (Char)
  private static boolean allowed(String text, int at) {
    char c = text.charAt(at);
    if (Character.isHighSurrogate(c)) {
      return at + 1 < text.length() && Character.isLowSurrogate(text.charAt(at + 1));
    }
    if (Character.isLowSurrogate(c)) {
      return at > 0 && Character.isHighSurrogate(text.charAt(at - 1));
    }
    return c == '\t' || c == '\n' || c == '\r' || c >= ' ' && c < '\ufffe';
  }
}
