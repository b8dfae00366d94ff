package mullwright.server;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import mullwright.syntax.LineTable;
import mullwright.syntax.TextRange;

/**
 * Where each key of a properties file stands ({@link java.util.Properties#load(java.io.Reader)}
 * tells what such a file is, and not where).
 */
final class PropertyPlaces {
  private PropertyPlaces() {}

  /** By key, each time it stands there: from its first letter to the end of its line. */
  static Map<String, List<TextRange>> of(String text) {
    Map<String, List<TextRange>> places = new LinkedHashMap<>();
    LineTable lines = LineTable.of(text);
    boolean goesOn = false;
    for (int line = 0; line < lines.count(); line++) {
      String words = text.substring(lines.start(line), lines.end(line));
      String key = goesOn ? "" : key(words.strip());
      if (!key.isEmpty()) {
        int start = lines.start(line) + words.length() - words.stripLeading().length();
        int end = lines.start(line) + words.stripTrailing().length();
        places.computeIfAbsent(key, first -> new ArrayList<>()).add(new TextRange(start, end));
      }
      boolean comment = !goesOn && (words.strip().startsWith("#") || words.strip().startsWith("!"));
      goesOn = !comment && slashes(words) % 2 == 1;
    }
    return places;
  }

  private static String key(String line) {
    if (line.isEmpty() || line.startsWith("#") || line.startsWith("!")) {
      return "";
    }
    StringBuilder key = new StringBuilder();
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '=' || c == ':' || Character.isWhitespace(c)) {
        break;
      }
      if (c == '\\' && i + 1 < line.length()) {
        i++;
        c = line.charAt(i);
      }
      key.append(c);
    }
    return key.toString();
  }

  /** How many backslashes a line ends with: an odd number makes the next one belong to it. */
  private static int slashes(String line) {
    int slashes = 0;
    while (slashes < line.length() && line.charAt(line.length() - 1 - slashes) == '\\') {
      slashes++;
    }
    return slashes;
  }
}
