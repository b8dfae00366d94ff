package mullwright.drawing;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.Objects;

/**
 * Widths of the letters of the font that comes with the program, read from its own tables, so that
 * a text is as wide on any machine.
 *
 * <p>Source: OpenType specification, tables {@code head}, {@code hhea}, {@code hmtx} and {@code
 * cmap} format 4.
 */
public final class FontMeasures {
  /** Height of a capital letter as a share of the size of the font: 1493 of 2048 units. */
  static final double CAPITAL = 1493.0 / 2048;

  /** Where the fonts lie. */
  public static final String PLAIN_FILE = "/mullwright/font/DejaVuSansCondensed.ttf";

  public static final String BOLD_FILE = "/mullwright/font/DejaVuSansCondensed-Bold.ttf";

  private final double[] widths = new double[0x10000];
  private final java.util.BitSet known = new java.util.BitSet();

  private FontMeasures(ByteBuffer font) {
    int unitsPerEm = font.getShort(table(font, "head") + 18);
    int measured = font.getShort(table(font, "hhea") + 34) & 0xffff;
    int advances = table(font, "hmtx");
    double missing = width(font, advances, measured, 0) / unitsPerEm;
    java.util.Arrays.fill(widths, missing);
    int map = formatFour(font);
    int segments = (font.getShort(map + 6) & 0xffff) / 2;
    int ends = map + 14;
    int starts = ends + 2 * segments + 2;
    int deltas = starts + 2 * segments;
    int offsets = deltas + 2 * segments;
    for (int i = 0; i < segments; i++) {
      int last = font.getShort(ends + 2 * i) & 0xffff;
      int offset = font.getShort(offsets + 2 * i) & 0xffff;
      for (int c = font.getShort(starts + 2 * i) & 0xffff; c <= last && c < 0xffff; c++) {
        int first = font.getShort(starts + 2 * i) & 0xffff;
        int delta = font.getShort(deltas + 2 * i);
        int glyph =
            offset == 0
                ? c + delta & 0xffff
                : glyph(font, offsets + 2 * i + offset + 2 * (c - first), delta);
        known.set(c, glyph != 0);
        widths[c] = width(font, advances, measured, glyph) / unitsPerEm;
      }
    }
  }

  private static int glyph(ByteBuffer font, int at, int delta) {
    int glyph = font.getShort(at) & 0xffff;
    return glyph == 0 ? 0 : glyph + delta & 0xffff;
  }

  private static double width(ByteBuffer font, int advances, int measured, int glyph) {
    return font.getShort(advances + 4 * Math.min(glyph, measured - 1)) & 0xffff;
  }

  private static int table(ByteBuffer font, String tag) {
    int tables = font.getShort(4);
    for (int i = 0; i < tables; i++) {
      int at = 12 + 16 * i;
      boolean same = true;
      for (int letter = 0; letter < 4; letter++) {
        same &= font.get(at + letter) == tag.charAt(letter);
      }
      if (same) {
        return font.getInt(at + 8);
      }
    }
    throw new IllegalStateException("the font has no table " + tag);
  }

  private static int formatFour(ByteBuffer font) {
    int map = table(font, "cmap");
    int kinds = font.getShort(map + 2);
    for (int i = 0; i < kinds; i++) {
      int at = map + font.getInt(map + 8 + 8 * i);
      if (font.getShort(at) == 4) {
        return at;
      }
    }
    throw new IllegalStateException("the font has no map of format 4");
  }

  /** Of the plain or the bold letters. */
  static FontMeasures of(boolean bold) {
    return bold ? Bold.MEASURES : Plain.MEASURES;
  }

  /**
   * The text with a question mark for each character the font has not; the sign of a diameter
   * stands as the letter that looks like it.
   */
  public static String printable(String text, boolean bold) {
    StringBuilder out = new StringBuilder();
    text.codePoints().forEach(c -> out.appendCodePoint(shown(c, bold)));
    return out.toString();
  }

  private static int shown(int c, boolean bold) {
    if (c < 0x10000 && of(bold).known.get(c)) {
      return c;
    }
    return c == '⌀' ? 'Ø' : '?';
  }

  /** Width of a line of text in sizes of the font. */
  double width(String text) {
    double sum = 0;
    for (int i = 0; i < text.length(); i++) {
      sum += widths[text.charAt(i)];
    }
    return sum;
  }

  private static FontMeasures read(String file) {
    try (InputStream in = FontMeasures.class.getResourceAsStream(file)) {
      return new FontMeasures(ByteBuffer.wrap(Objects.requireNonNull(in, file).readAllBytes()));
    } catch (IOException broken) {
      throw new UncheckedIOException("the program's own font cannot be read: " + file, broken);
    }
  }

  /** Read when first asked for. */
  private static final class Plain {
    static final FontMeasures MEASURES = read(PLAIN_FILE);
  }

  /** Read when first asked for. */
  private static final class Bold {
    static final FontMeasures MEASURES = read(BOLD_FILE);
  }
}
