package mullwright.cli;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A terminal's coloured output as an SVG picture, for a page that shows it. */
final class TerminalPicture {
  private static final double CHARACTER = 8.05;
  private static final int LINE = 19;
  private static final int MARGIN = 16;
  private static final String INK = "#24292f";

  /** A stretch of text that a code of ECMA-48 (select graphic rendition) may stand before. */
  private static final Pattern STRETCH =
      Pattern.compile("(?:\u001b\\[(?<codes>[0-9;]*)m)?(?<text>[^\u001b]*)");

  private static final Pattern WORDS = Pattern.compile("\\S+(?: \\S+)*");

  private TerminalPicture() {}

  /** The picture of a command and what it printed, so many characters wide. */
  static String of(String command, String printed, int width) {
    String[] lines = ("$ " + command + "\n\n" + printed.stripTrailing()).split("\n", -1);
    double across = 2 * MARGIN + width * CHARACTER;
    int down = 2 * MARGIN + lines.length * LINE;
    StringBuilder svg = new StringBuilder();
    svg.append(
        String.format(
            Locale.ROOT,
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.0f\" height=\"%d\""
                + " viewBox=\"0 0 %.0f %d\" role=\"img\" aria-label=\"%s in a terminal\">\n"
                + "<rect width=\"%.0f\" height=\"%d\" rx=\"8\" fill=\"#fbfaf7\""
                + " stroke=\"#d5d2c8\"/>\n"
                + "<g font-family=\"DejaVu Sans Mono, Menlo, Consolas, monospace\""
                + " font-size=\"13.4\">\n",
            across,
            down,
            across,
            down,
            escaped(command),
            across,
            down));
    for (int i = 0; i < lines.length; i++) {
      line(svg, lines[i], MARGIN + (i + 1) * LINE - 5);
    }
    return svg.append("</g></svg>\n").toString();
  }

  private static void line(StringBuilder svg, String line, int y) {
    int column = 0;
    Matcher stretch = STRETCH.matcher(line);
    while (stretch.find() && stretch.end() > stretch.start()) {
      String text = stretch.group("text");
      String look = look(stretch.group("codes"));
      // what shows pictures folds spaces: words that more than one of them parts stand by
      // themselves
      Matcher words = WORDS.matcher(text);
      while (words.find()) {
        svg.append(
            String.format(
                Locale.ROOT,
                "<text x=\"%.1f\" y=\"%d\"%s textLength=\"%.1f\""
                    + " lengthAdjust=\"spacingAndGlyphs\">%s</text>\n",
                MARGIN + (column + words.start()) * CHARACTER,
                y,
                look,
                words.group().length() * CHARACTER,
                escaped(words.group())));
      }
      column += text.length();
    }
  }

  private static String look(String codes) {
    String all = ";" + (codes == null ? "" : codes) + ";";
    String colour =
        all.contains(";31;")
            ? "#c62828"
            : all.contains(";33;")
                ? "#9a6700"
                : all.contains(";34;") || all.contains(";36;")
                    ? "#0b5cad"
                    : all.contains(";2;") || all.contains(";90;") ? "#767b84" : INK;
    return " fill=\"" + colour + "\"" + (all.contains(";1;") ? " font-weight=\"bold\"" : "");
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
  }
}
