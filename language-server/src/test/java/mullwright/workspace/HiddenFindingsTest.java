package mullwright.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import mullwright.check.Finding;
import mullwright.check.Rules;
import org.junit.jupiter.api.Test;

/**
 * While a line of the grid, the members or the anchors cannot be read, nothing is told of the wall
 * that may follow from it; what was told before comes back with the edit that mends the line.
 */
class HiddenFindingsTest {
  private static final Path EXAMPLES = Path.of("../examples");
  private static final String WALL = "ferry-terminal/east.wall";
  private static final String CATALOG = "catalog/captured.wall";

  @Test
  void whatWasHiddenComesBackWithTheMend() throws IOException {
    String catalog = Files.readString(EXAMPLES.resolve(CATALOG), StandardCharsets.UTF_8);
    String wall =
        Files.readString(EXAMPLES.resolve(WALL), StandardCharsets.UTF_8)
            .replace("gap 5/8\"", "gap 1/8\"");
    Workspace workspace = new Workspace(new MemoryFiles(Map.of(CATALOG, catalog)), Rules.find());
    workspace.open(WALL, wall);
    List<Finding> whole = findings(workspace.snapshot());
    assertThat(whole)
        .isNotEmpty()
        .allSatisfy(finding -> assertThat(finding.rule()).isEqualTo("splice-gap-too-small"));
    int hidden = 0;
    for (int[] line : lines(wall, "grid {", "lites {")) {
      // a letter more, a letter another, a mark that stands apart and leaves the wall what it is
      List<Snapshot> broken =
          List.of(
              workspace.change(WALL, line[0], line[0], "q"),
              change(workspace, line[0], line[0] + 1, "q", wall),
              change(workspace, line[1], line[1], " §", wall));
      for (Snapshot snapshot : broken) {
        List<Finding> found = findings(snapshot);
        if (found.stream().noneMatch(it -> it.rule().equals("splice-gap-too-small"))) {
          hidden++;
        }
        assertThat(found)
            .extracting(Finding::rule)
            .doesNotContain("anchor-missing", "glass-missing");
      }
      assertThat(findings(workspace.open(WALL, wall)))
          .as(wall.substring(line[0], line[1]))
          .isEqualTo(whole);
    }
    assertThat(hidden).isGreaterThan(20);
  }

  private static Snapshot change(Workspace workspace, int start, int end, String by, String wall) {
    workspace.open(WALL, wall);
    return workspace.change(WALL, start, end, by);
  }

  /** Where the statements between two words begin and their lines end. */
  private static List<int[]> lines(String wall, String from, String to) {
    List<int[]> lines = new ArrayList<>();
    int at = wall.indexOf('\n', wall.indexOf(from)) + 1;
    while (at < wall.indexOf(to)) {
      int end = wall.indexOf('\n', at);
      String line = wall.substring(at, end);
      int comment = line.indexOf("//");
      int last = at + (comment < 0 ? line : line.substring(0, comment)).stripTrailing().length();
      if (!line.isBlank() && !line.contains("{") && !line.contains("}")) {
        lines.add(new int[] {at + line.length() - line.stripLeading().length(), last});
      }
      at = end + 1;
    }
    return lines;
  }

  private static List<Finding> findings(Snapshot snapshot) {
    return snapshot.reading(WALL).orElseThrow().findings(Cancel.NEVER);
  }
}
