package mullwright.report;

import java.util.ArrayList;
import java.util.List;

/**
 * How much room text takes on a terminal, and how it is cut into lines that fit.
 *
 * <p>A combining mark takes no column, East Asian wide characters and most emoji take two (Unicode
 * Standard Annex #11, from memory), everything else one.
 */
final class TextWidth {
  /** Stands in a cell where a line may not be broken; written as a plain space. */
  static final char GLUE = '\u00a0';

  private static final int[][] WIDE = {
    {0x1100, 0x115F}, {0x2E80, 0x303E}, {0x3041, 0xA4CF}, {0xAC00, 0xD7A3}, {0xF900, 0xFAFF},
    {0xFE30, 0xFE6F}, {0xFF00, 0xFF60}, {0xFFE0, 0xFFE6}, {0x1F300, 0x1F64F}, {0x1F900, 0x1F9FF},
    {0x20000, 0x3FFFD}
  };

  private TextWidth() {}

  /** Columns the text takes; it holds no tab and no line end. */
  static int of(String text) {
    return text.codePoints().map(TextWidth::of).sum();
  }

  static int of(int codePoint) {
    int type = Character.getType(codePoint);
    if (type == Character.NON_SPACING_MARK
        || type == Character.ENCLOSING_MARK
        || type == Character.FORMAT) {
      return 0;
    }
    for (int[] range : WIDE) {
      if (codePoint < range[0]) {
        return 1;
      }
      if (codePoint <= range[1]) {
        return 2;
      }
    }
    return 1;
  }

  /**
   * The text with everything that could steer a terminal (escape codes, line ends, marks that turn
   * the direction of writing) as U+FFFD: what a file holds is shown, never obeyed.
   */
  static String harmless(String text) {
    StringBuilder clean = null;
    for (int at = 0; at < text.length(); at++) {
      char c = text.charAt(at);
      if (steers(c)) {
        clean = clean == null ? new StringBuilder(text) : clean;
        clean.setCharAt(at, '\ufffd');
      }
    }
    return clean == null ? text : clean.toString();
  }

  private static boolean steers(char c) {
    return Character.isISOControl(c)
        || (c >= '\u202a' && c <= '\u202e')
        || (c >= '\u2066' && c <= '\u2069')
        || c == '\u2028'
        || c == '\u2029'
        || c == '\u200e'
        || c == '\u200f';
  }

  /** The lines of a text wrapped between words; a word longer than the width keeps its line. */
  static List<String> wrap(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    int used = 0;
    for (String word : text.strip().split("[ \n\t]+")) {
      int needed = of(word);
      if (used > 0 && used + 1 + needed > width) {
        lines.add(line.toString());
        line.setLength(0);
        used = 0;
      }
      if (used > 0) {
        line.append(' ');
        used++;
      }
      line.append(word);
      used += needed;
    }
    lines.add(line.toString());
    return lines;
  }

  /** Width of the longest word. */
  static int longestWord(String text) {
    int longest = 0;
    for (String word : text.split(" ")) {
      longest = Math.max(longest, of(word));
    }
    return longest;
  }

  static String spaces(int count) {
    return " ".repeat(Math.max(0, count));
  }

  static String padded(String text, int width, boolean right) {
    String room = spaces(width - of(text));
    return right ? room + text : text + room;
  }
}
