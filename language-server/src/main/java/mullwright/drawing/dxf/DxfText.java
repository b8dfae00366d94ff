package mullwright.drawing.dxf;

/** Writes text in the seven bits of the format. */
final class DxfText {
  private DxfText() {}

  static String of(String text) {
    StringBuilder out = new StringBuilder(text.length());
    text.codePoints().forEach(c -> append(c, out));
    return out.toString();
  }

  private static void append(int c, StringBuilder out) {
    switch (c) {
      case '°' -> out.append("%%d");
      case '±' -> out.append("%%p");
      case '⌀', 'Ø' -> out.append("%%c");
      // two in a row would begin a sign
      case '%' -> out.append(out.length() > 0 && out.charAt(out.length() - 1) == '%' ? " %" : "%");
      case '×' -> out.append('x');
      case '−', '–', '—' -> out.append('-');
      case '…' -> out.append("...");
      default -> {
        if (c >= ' ' && c < 127) {
          out.append((char) c);
        } else if (c < ' ' || c > 0xffff) {
          out.append('?');
        } else {
          out.append(String.format("\\U+%04X", c));
        }
      }
    }
  }
}
