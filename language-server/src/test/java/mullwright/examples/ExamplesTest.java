package mullwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import mullwright.check.Finding;
import mullwright.check.Rules;
import mullwright.format.Formatter;
import mullwright.syntax.ParsedFile;
import mullwright.workspace.Cancel;
import mullwright.workspace.DiskFiles;
import mullwright.workspace.Snapshot;
import mullwright.workspace.Workspace;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Every example is clean and laid out as the formatter lays it out. */
class ExamplesTest {
  private static final Path EXAMPLES = Path.of("").toAbsolutePath().getParent().resolve("examples");

  private final Snapshot snapshot = new Workspace(new DiskFiles(EXAMPLES), Rules.find()).snapshot();

  @TestFactory
  Stream<DynamicTest> nothingIsFound() {
    return snapshot.walls().stream()
        .map(
            path ->
                DynamicTest.dynamicTest(
                    path,
                    () -> {
                      List<Finding> findings =
                          snapshot.reading(path).orElseThrow().findings(Cancel.NEVER);
                      assertThat(findings).extracting(Finding::message).isEmpty();
                    }));
  }

  @TestFactory
  Stream<DynamicTest> theFormatterChangesNothing() {
    return snapshot.walls().stream()
        .map(
            path ->
                DynamicTest.dynamicTest(
                    path,
                    () -> {
                      ParsedFile file = snapshot.file(path).orElseThrow();
                      assertThat(Formatter.format(file)).isEqualTo(file.text());
                    }));
  }

  @Test
  void thereAreWallsInInchesAndInMillimetresAndRoundACorner() {
    List<Integer> corners =
        snapshot.walls().stream()
            .flatMap(path -> snapshot.reading(path).orElseThrow().model().walls().stream())
            .map(wall -> wall.grid().corners().size())
            .toList();
    assertThat(corners).hasSizeGreaterThanOrEqualTo(3).contains(1);
  }
}
