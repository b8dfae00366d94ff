package mullwright.report;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Shows a page of simple Markdown on a terminal: headings, paragraphs, lists, fenced code, tables
 * as they stand. Code and tables are not wrapped.
 */
final class MarkdownTerminal {
  private static final Pattern ITEM = Pattern.compile("( *)([-*]|[0-9]+[.)]) +(.*)");
  private static final Pattern LINK = Pattern.compile("\\[([^\\]]*)\\]\\([^)]*\\)");
  private static final Pattern STRONG = Pattern.compile("\\*\\*([^*]+)\\*\\*");

  private final int width;
  private final Paint paint;
  private final StringBuilder out = new StringBuilder();
  private final List<String> paragraph = new ArrayList<>();
  private String first = "";
  private String rest = "";

  MarkdownTerminal(int width, Paint paint) {
    this.width = width;
    this.paint = paint;
  }

  String render(String page) {
    boolean code = false;
    for (String line : page.split("\n", -1)) {
      Matcher item = ITEM.matcher(line);
      if (line.startsWith("```")) {
        flush();
        code = !code;
      } else if (code) {
        out.append(("    " + TextWidth.harmless(line.replace("\t", "    "))).stripTrailing());
        out.append('\n');
      } else if (line.startsWith("#")) {
        flush();
        out.append(paint.bold(plain(line.replaceFirst("^#+ *", "")))).append('\n');
      } else if (line.startsWith("|")) {
        flush();
        out.append(TextWidth.harmless(line)).append('\n');
      } else if (item.matches()) {
        flush();
        first = item.group(1) + item.group(2) + " ";
        rest = TextWidth.spaces(first.length());
        paragraph.add(item.group(3));
      } else if (line.isBlank()) {
        flush();
        blank();
      } else {
        paragraph.add(line.strip());
      }
    }
    flush();
    return out.toString().strip().isEmpty() ? "" : out.toString().strip() + "\n";
  }

  private void blank() {
    if (out.length() > 1 && !out.substring(out.length() - 2).equals("\n\n")) {
      out.append('\n');
    }
  }

  private void flush() {
    if (!paragraph.isEmpty()) {
      String text = plain(String.join(" ", paragraph));
      String lead = first;
      for (String line : TextWidth.wrap(text, Math.max(20, width - first.length()))) {
        out.append(lead).append(line).append('\n');
        lead = rest;
      }
      paragraph.clear();
    }
    first = "";
    rest = "";
  }

  /** The words of a line without the marks of links, strong words and code. */
  static String plain(String text) {
    String linked = LINK.matcher(text).replaceAll("$1");
    return TextWidth.harmless(STRONG.matcher(linked).replaceAll("$1").replace("`", ""));
  }
}
