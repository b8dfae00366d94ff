package mullwright.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A brace that is missing or one too many, in turn at each place of the examples, is one error at
 * that place; the rest is understood as if it were right, and the first fix makes it so.
 */
class BraceSlipsTest {
  private static final Path EXAMPLES = Path.of("../examples");

  /** Braces that are no part of a comment or text in quotes. */
  private static final Pattern BRACE = Pattern.compile("//[^\n]*|\"[^\"\n]*\"|([{}])");

  private static final String FILES =
      """
      ferry-terminal/east.wall|catalog/captured.wall
      library-corner/reading-room.wall|catalog/captured-metric.wall
      tower/north.wall|catalog/captured.wall
      catalog/captured.wall|
      catalog/captured-metric.wall|
      """;

  private Map<String, String> texts;
  private String path;
  private String right;

  private void read(String file, String used) throws IOException {
    path = file;
    right = Files.readString(EXAMPLES.resolve(file), StandardCharsets.UTF_8);
    texts = new HashMap<>();
    if (used != null) {
      texts.put(used, Files.readString(EXAMPLES.resolve(used), StandardCharsets.UTF_8));
    }
  }

  private void isOneError(String text, String message, int line) {
    texts.put(path, text);
    CheckedText checked = new CheckedText(path, texts, Rules.find());
    assertThat(checked.failures()).isEmpty();
    List<Finding> found = checked.findings();
    assertThat(found).as(message + " at line " + line).hasSize(1);
    Finding finding = found.get(0);
    assertThat(finding.message()).contains(message);
    int at = checked.place(finding.origin()).start();
    assertThat(lineOf(text, at)).as(finding.message()).isEqualTo(line);
    texts.putAll(checked.after(finding.fixes().get(0)));
    assertThat(new CheckedText(path, texts, Rules.find()).findings())
        .as("after “%s” at line %d", finding.fixes().get(0).title(), line)
        .isEmpty();
  }

  private static int lineOf(String text, int offset) {
    return (int) text.substring(0, offset).lines().count()
        + (offset == 0 || text.charAt(offset - 1) == '\n' ? 1 : 0);
  }

  private List<Integer> braces(String which) {
    return BRACE
        .matcher(right)
        .results()
        .filter(match -> which.equals(match.group(1)))
        .map(match -> match.start())
        .toList();
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = FILES)
  void eachOpeningBraceLeftOut(String file, String used) throws IOException {
    read(file, used);
    for (int brace : braces("{")) {
      String text = right.substring(0, brace).stripTrailing() + right.substring(brace + 1);
      isOneError(text, "A “{” is missing after", lineOf(right, brace));
    }
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = FILES)
  void eachClosingBraceLeftOut(String file, String used) throws IOException {
    read(file, used);
    for (int brace : braces("}")) {
      String text = right.substring(0, brace).stripTrailing() + right.substring(brace + 1);
      // told where the block begins: the line above with the same indentation
      int start = right.lastIndexOf('\n', brace) + 1;
      String indent = right.substring(start, brace);
      Matcher opening = Pattern.compile("(?m)^" + indent + "\\w[^\n]*\\{").matcher(right);
      int line = 0;
      while (opening.find() && opening.start() < brace) {
        line = lineOf(right, opening.start());
      }
      isOneError(text, "does not end", line);
    }
  }

  @ParameterizedTest
  @CsvSource(delimiter = '|', textBlock = FILES)
  void aClosingBraceTooManyBeforeEachLineOfABlock(String file, String used) throws IOException {
    read(file, used);
    List<String> lines = right.lines().toList();
    int start = 0;
    for (int i = 0; i < lines.size(); i++) {
      boolean inside = lines.get(i).startsWith(" ") || lines.get(i).startsWith("}");
      // all lines of one wall; of the others every seventh stands for all
      boolean chosen = file.startsWith("ferry") || i % 7 == 0;
      if (inside && chosen && !lines.get(i).isBlank()) {
        String text = right.substring(0, start) + "}\n" + right.substring(start);
        isOneError(text, "This “}”", i + (lines.get(i).startsWith("}") ? 2 : 1));
      }
      start += lines.get(i).length() + 1;
    }
  }
}
