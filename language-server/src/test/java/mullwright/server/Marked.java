package mullwright.server;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import mullwright.syntax.LineTable;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;

/**
 * A text with places marked in it: {@code ‹1› a place, ‹2›…} and {@code «a:…»} a stretch by name.
 *
 * @param text without the marks
 * @param places by name, in the order of the text
 */
record Marked(String text, Map<String, Range> places) {
  private static final Pattern MARK = Pattern.compile("‹(\\w+)›|«(\\w+):([^»]*)»");

  static Marked of(String marked) {
    Matcher mark = MARK.matcher(marked);
    StringBuilder text = new StringBuilder();
    Map<String, int[]> found = new LinkedHashMap<>();
    int from = 0;
    while (mark.find()) {
      text.append(marked, from, mark.start());
      int start = text.length();
      if (mark.group(1) != null) {
        found.put(mark.group(1), new int[] {start, start});
      } else {
        text.append(mark.group(3));
        found.put(mark.group(2), new int[] {start, text.length()});
      }
      from = mark.end();
    }
    text.append(marked, from, marked.length());
    String plain = text.toString();
    LineTable lines = LineTable.of(plain);
    Map<String, Range> places = new LinkedHashMap<>();
    found.forEach(
        (name, at) -> places.put(name, new Range(position(lines, at[0]), position(lines, at[1]))));
    return new Marked(plain, places);
  }

  private static Position position(LineTable lines, int offset) {
    return new Position(lines.line(offset), lines.column(offset));
  }

  Range range(String name) {
    return places.get(name);
  }

  Position at(String name) {
    return places.get(name).getStart();
  }
}
