package mullwright.syntax;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the language's page and the example walls show can be read. */
class LanguagePageTest {
  private static final Path PAGE = Path.of("LANGUAGE.md");
  private static final Path EXAMPLES = Path.of("../examples");

  static Stream<Path> examples() throws IOException {
    try (Stream<Path> files = Files.walk(EXAMPLES)) {
      return files.filter(file -> file.toString().endsWith(".wall")).sorted().toList().stream();
    }
  }

  @ParameterizedTest
  @MethodSource("examples")
  void readsTheExample(Path wall) {
    assertThat(problems(Fixtures.read(wall))).isEmpty();
  }

  @Test
  void readsEveryLineOfThePage() throws IOException {
    String heading = "";
    boolean snippet = false;
    int read = 0;
    for (String line : Files.readAllLines(PAGE, StandardCharsets.UTF_8)) {
      if (line.startsWith("```")) {
        snippet = !snippet;
      } else if (snippet && !line.isBlank()) {
        String text = inItsBlock(heading, line.replaceAll("\\{ \u2026.*?}", "{ }"));
        assertThat(problems(text)).as(line).isEmpty();
        read++;
      } else if (line.startsWith("#")) {
        heading = line;
      }
    }
    assertThat(read).isGreaterThan(50);
  }

  /** A line of the page within a block that takes its first word. */
  private static String inItsBlock(String heading, String statement) {
    if (heading.contains("Criteria")) {
      return "project \"P\" {\ncriteria {\n" + statement + "\n}\n}\n";
    }
    String word = statement.strip().split(" ")[0];
    for (String block : List.of("grid", "members", "anchors", "lites", "installation")) {
      if (Keywords.isStatementWord(BlockKind.valueOf(block.toUpperCase(Locale.ROOT)), word)
          && !heading.contains("File")) {
        return "wall W {\n" + block + " {\n" + statement + "\n}\n}\n";
      }
    }
    return statement + "\n";
  }

  private static List<String> problems(String text) {
    List<String> problems = new ArrayList<>();
    ParsedFile file = RoundTrip.check(text);
    for (ParsedFile.FileProblem problem : file.problems()) {
      String segment = file.segments().get(problem.segment()).text();
      problems.add(TreePrinter.problem(problem.problem(), segment));
    }
    return problems;
  }
}
