package mullwright.drawing;

import java.util.ArrayList;
import java.util.List;

/** Breaks text into lines. */
public final class Paragraph {
  private Paragraph() {}

  /** The text in lines no wider than that [mm]; a word that is wider is broken. */
  public static List<String> lines(String text, Lettering lettering, double most) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.strip().split("\\s+")) {
      String rest = word;
      String joined = line.length() == 0 ? rest : line + " " + rest;
      if (lettering.width(joined) > most && line.length() > 0) {
        lines.add(line.toString());
        line.setLength(0);
        joined = rest;
      }
      while (lettering.width(joined) > most && joined.length() > 1) {
        int fits = 1;
        while (fits < joined.length() && lettering.width(joined.substring(0, fits + 1)) <= most) {
          fits++;
        }
        lines.add(joined.substring(0, fits));
        joined = joined.substring(fits);
      }
      line.setLength(0);
      line.append(joined);
    }
    if (line.length() > 0) {
      lines.add(line.toString());
    }
    return lines;
  }
}
