package mullwright.report;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** A font of the report, with its measures. What it cannot print it prints as a question mark. */
final class PdfFont {
  private static final int PER_EM = 1000;

  private final PDType0Font font;
  private final Map<Integer, Float> widths = new HashMap<>();

  PdfFont(PDDocument pdf, String file) throws IOException {
    try (InputStream in = PdfFont.class.getResourceAsStream("/mullwright/font/" + file)) {
      font = PDType0Font.load(pdf, Objects.requireNonNull(in, file), true);
    }
  }

  PDType0Font font() {
    return font;
  }

  /** The text with what the font has not replaced. */
  String printable(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints().forEach(c -> out.appendCodePoint(width(c) < 0 ? '?' : c));
    return out.toString();
  }

  /** Width of text the font can print, at a size [pt]. */
  float width(String text, float size) {
    float sum = 0;
    for (int c : text.codePoints().toArray()) {
      sum += Math.max(0, width(c));
    }
    return sum * size / PER_EM;
  }

  private float width(int character) {
    return widths.computeIfAbsent(character, this::measure);
  }

  private float measure(int character) {
    try {
      return font.getStringWidth(Character.toString(character));
    } catch (IOException | IllegalArgumentException missing) {
      // the font says so by an exception: it has no such character
      return -1;
    }
  }

  /** The text in lines no wider than that; a word that is wider is broken. */
  List<String> wrap(String text, float size, float most) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ")) {
      String rest = word;
      while (width(rest, size) > most && rest.length() > 1) {
        int fits = 1;
        while (fits < rest.length() && width(rest.substring(0, fits + 1), size) <= most) {
          fits++;
        }
        if (line.length() > 0) {
          lines.add(line.toString());
          line.setLength(0);
        }
        lines.add(rest.substring(0, fits));
        rest = rest.substring(fits);
      }
      String joined = line.length() == 0 ? rest : line + " " + rest;
      if (width(joined, size) > most && line.length() > 0) {
        lines.add(line.toString());
        line.setLength(0);
        joined = rest;
      }
      line.setLength(0);
      line.append(joined);
    }
    lines.add(line.toString());
    return lines;
  }

  /** The widest word of a text. */
  float widestWord(String text, float size) {
    float widest = 0;
    for (String word : text.split(" ")) {
      widest = Math.max(widest, width(word, size));
    }
    return widest;
  }
}
