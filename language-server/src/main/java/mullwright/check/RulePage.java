package mullwright.check;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The page that explains a rule, as the program carries it.
 *
 * <p>Its first paragraph is one sentence, the summary; under fixed headings follow what, why and
 * how. A line {@code fixture: trips.wall} stands for the wall of that name among the rule's own.
 *
 * @param rule the rule's name
 * @param text the page as written
 */
public record RulePage(String rule, String text) {
  /** The headings of every page, in their order. */
  public static final List<String> HEADINGS =
      List.of(
          "What it says",
          "Why it matters",
          "How it is decided",
          "A wall that trips",
          "The same wall mended",
          "When to allow it");

  private static final String FIXTURE = "fixture: ";
  private static final String FIXTURES = "fixtures/";

  /**
   * The page of a rule.
   *
   * @throws IllegalStateException if the program does not carry it
   */
  public static RulePage of(String rule) {
    return new RulePage(rule, read(rule + ".md"));
  }

  /** The page of a rule, if the program carries one of that name. */
  public static Optional<RulePage> find(String rule) {
    return RulePage.class.getResource(rule + ".md") == null
        ? Optional.empty()
        : Optional.of(of(rule));
  }

  private static String read(String resource) {
    try (InputStream stream = RulePage.class.getResourceAsStream(resource)) {
      if (stream == null) {
        throw new IllegalStateException("no page " + resource);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  /** The text of a wall that a page shows, or of what it uses: {@code anchor-locked/trips.wall}. */
  public static String fixture(String path) {
    return read(FIXTURES + path);
  }

  /** One sentence: what the rule finds. */
  public String summary() {
    for (String paragraph : text.split("\n\n")) {
      if (!paragraph.startsWith("#")) {
        return paragraph.replace('\n', ' ').strip();
      }
    }
    return "";
  }

  /** The headings it has, in order. */
  public List<String> headings() {
    return text.lines().filter(line -> line.startsWith("## ")).map(l -> l.substring(3)).toList();
  }

  /** What stands under a heading; empty if it has none of that name. */
  public String section(String heading) {
    List<String> lines = new ArrayList<>();
    boolean inside = false;
    for (String line : text.lines().toList()) {
      if (line.startsWith("## ")) {
        inside = line.equals("## " + heading);
      } else if (inside) {
        lines.add(line);
      }
    }
    return String.join("\n", lines).strip();
  }

  /** The walls it shows, by file name, in order. */
  public List<String> fixtures() {
    return text.lines()
        .filter(line -> line.startsWith(FIXTURE))
        .map(line -> line.substring(FIXTURE.length()).strip())
        .toList();
  }

  /** The whole page with its title, and its walls in their places. */
  public String withFixtures() {
    StringBuilder page = new StringBuilder("# " + rule + "\n\n");
    for (String line : text.lines().toList()) {
      if (line.startsWith(FIXTURE)) {
        String wall = read(FIXTURES + rule + "/" + line.substring(FIXTURE.length()).strip());
        page.append("```wall\n").append(wall.stripTrailing()).append("\n```\n");
      } else {
        page.append(line).append('\n');
      }
    }
    return page.toString();
  }
}
